// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.sheet;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A group of named fields: a record.
 *
 * @param constructor builds the record from its components in order
 * @param slots its fields in order
 */
record GroupShape(Constructor<?> constructor, List<Slot> slots) implements Shape {
    static GroupShape of(Class<?> type) {
        List<Slot> slots =
                Arrays.stream(type.getRecordComponents()).map(Slot::of).toList();
        return new GroupShape(Slot.opened(type.getDeclaredConstructors()[0]), slots);
    }

    @Override
    public Optional<Object> read(JsonNode node, Place place, Findings findings) {
        if (!node.isObject()) {
            findings.wrongType(place, node, this);
            return Optional.empty();
        }
        refuseUnknownFields(node, place, findings);
        List<Optional<Object>> values =
                slots.stream().map(slot -> slot.read(node, place, findings)).toList();
        boolean complete = values.stream().allMatch(Optional::isPresent);
        return complete
                ? built(values.stream().map(Optional::orElseThrow).toArray(), node, place, findings)
                : Optional.empty();
    }

    private void refuseUnknownFields(JsonNode node, Place place, Findings findings) {
        List<String> known = slots.stream().map(Slot::name).toList();
        node.properties().stream()
                .filter(field -> !known.contains(field.getKey()))
                .forEach(field -> findings.add(
                        place.at(field.getKey()),
                        field.getValue(),
                        "there is no field of that name here",
                        remedyFor(field.getKey(), known)));
    }

    private static String remedyFor(String name, List<String> known) {
        return NearestName.of(name, known)
                .map("write \"%s\" if that was meant, or leave the field out"::formatted)
                .orElseGet(() -> "leave it out (the fields known here are %s)".formatted(quoted(known)));
    }

    private static String quoted(List<String> names) {
        return names.stream().map(name -> '"' + name + '"').collect(Collectors.joining(", "));
    }

    private Optional<Object> built(Object[] values, JsonNode node, Place place, Findings findings) {
        try {
            return Optional.of(constructor.newInstance(values));
        } catch (InvocationTargetException refusal) {
            findings.add(
                    place,
                    node,
                    SheetProblem.shortened(String.valueOf(refusal.getCause().getMessage())),
                    advice());
            return Optional.empty();
        } catch (ReflectiveOperationException fault) {
            throw new IllegalStateException(
                    "The record (%s) of a sheet cannot be built.".formatted(constructor), fault);
        }
    }

    @Override
    public ObjectNode write(Object value) {
        ObjectNode group = JsonText.object();
        slots.forEach(slot -> slot.write(value).ifPresent(node -> group.set(slot.name(), node)));
        return group;
    }

    @Override
    public String noun() {
        return "a group in braces";
    }

    @Override
    public String advice() {
        return "write a group in braces with the fields "
                + quoted(slots.stream().map(Slot::name).toList());
    }

    @Override
    public ObjectNode schema() {
        ObjectNode schema = JsonText.object().put("type", "object");
        ObjectNode properties = schema.putObject("properties");
        slots.forEach(slot -> properties.set(slot.name(), slot.shape().schema()));
        ArrayNode required = schema.putArray("required");
        slots.stream().filter(slot -> !slot.optional()).map(Slot::name).forEach(required::add);
        return schema.put("additionalProperties", false);
    }

    @Override
    public void listFields(Place place, Optional<String> optionalAt, List<SheetField> fields) {
        slots.forEach(slot -> slot.listFields(place, optionalAt, fields));
    }
}
