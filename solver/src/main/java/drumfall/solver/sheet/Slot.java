// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.sheet;

import com.fasterxml.jackson.databind.JsonNode;
import java.lang.reflect.AccessibleObject;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.List;
import java.util.Optional;

/**
 * One named field of a group.
 *
 * @param name of the field and of the record's component
 * @param optional whether it may be left out
 * @param shape what stands in it
 * @param accessor reads the component
 */
record Slot(String name, boolean optional, Shape shape, Method accessor) {
    static Slot of(RecordComponent component) {
        boolean optional = component.getType() == Optional.class;
        Shape shape = optional
                ? Shapes.of(Shapes.argument(component.getGenericType()), component)
                : Shapes.of(component.getGenericType(), component);
        return new Slot(component.getName(), optional, shape, opened(component.getAccessor()));
    }

    /** Records nested in a package-private class are read and built as well. */
    static <A extends AccessibleObject> A opened(A member) {
        member.setAccessible(true);
        return member;
    }

    /** The component's value, an optional one for an optional field, or nothing after the findings were told why. */
    Optional<Object> read(JsonNode group, Place place, Findings findings) {
        JsonNode node = group.get(name);
        Place here = place.at(name);
        if (node == null) {
            return absent(here, findings);
        }
        Optional<Object> value = shape.read(node, here, findings);
        return optional ? value.map(Optional::of) : value;
    }

    private Optional<Object> absent(Place here, Findings findings) {
        if (!optional) {
            findings.add(here, SheetProblem.NOTHING, "the field \"%s\" is missing".formatted(name), shape.advice());
        }
        return optional ? Optional.of(Optional.empty()) : Optional.empty();
    }

    /** The node of this field in a record; nothing for an optional field without a value. */
    Optional<JsonNode> write(Object record) {
        Object value = valueIn(record);
        return optional ? ((Optional<?>) value).map(shape::write) : Optional.of(shape.write(value));
    }

    private Object valueIn(Object record) {
        try {
            return accessor.invoke(record);
        } catch (ReflectiveOperationException fault) {
            throw new IllegalStateException("The component (%s) of a sheet cannot be read.".formatted(name), fault);
        }
    }

    void listFields(Place group, Optional<String> optionalAt, List<SheetField> fields) {
        Place here = group.at(name);
        shape.listFields(here, optional ? Optional.of(here.pointer()) : optionalAt, fields);
    }
}
