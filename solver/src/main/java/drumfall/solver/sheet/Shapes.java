// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.sheet;

import drumfall.solver.quantity.Quantity;
import java.lang.reflect.AnnotatedElement;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.util.Arrays;
import java.util.List;

/** Finds the shape of a record and of its components. */
final class Shapes {
    /** The most entries of a list that states no bounds; no list of a sheet needs more. */
    private static final int MOST_ENTRIES = 100;

    private static final ClassValue<GroupShape> GROUPS = new ClassValue<>() {
        @Override
        protected GroupShape computeValue(Class<?> type) {
            return GroupShape.of(type);
        }
    };

    private Shapes() {}

    /**
     * The shape of a record.
     *
     * @throws IllegalArgumentException if a component is of a type that sheets do not know or lacks its annotation
     */
    static GroupShape ofRecord(Class<?> type) {
        return GROUPS.get(type);
    }

    static Shape of(Type type, AnnotatedElement notes) {
        if (type instanceof ParameterizedType generic && generic.getRawType() == List.class) {
            return list(of(argument(type), notes), notes);
        }
        return ofClass((Class<?>) type, notes);
    }

    /** The one type argument of a list or an optional. */
    static Type argument(Type type) {
        return ((ParameterizedType) type).getActualTypeArguments()[0];
    }

    private static Shape list(Shape entry, AnnotatedElement notes) {
        Entries entries = notes.getAnnotation(Entries.class);
        return entries == null
                ? new ListShape(entry, 0, MOST_ENTRIES)
                : new ListShape(entry, entries.from(), entries.to());
    }

    private static Shape ofClass(Class<?> type, AnnotatedElement notes) {
        if (type == Quantity.class) {
            return quantity(notes);
        }
        if (type == int.class || type == Integer.class) {
            return count(notes);
        }
        if (type == boolean.class) {
            return new FlagShape();
        }
        if (type == String.class) {
            return new TextShape();
        }
        if (type.isEnum()) {
            return new ChoiceShape(type);
        }
        if (type.isRecord()) {
            return ofRecord(type);
        }
        throw refused("The type (%s) of %s is none that a sheet can hold.", type.getName(), notes);
    }

    private static Shape quantity(AnnotatedElement notes) {
        Measure[] measures = notes.getAnnotationsByType(Measure.class);
        if (measures.length == 0) {
            throw refused("The quantity (%s) of %s must say what it measures. Maybe add @Measure.", notes, notes);
        }
        return new QuantityShape(Arrays.stream(measures).map(QuantityRange::of).toList());
    }

    private static Shape count(AnnotatedElement notes) {
        Count count = notes.getAnnotation(Count.class);
        if (count == null) {
            throw refused("The whole number (%s) of %s must have bounds. Maybe add @Count.", notes, notes);
        }
        return new CountShape(count.from(), count.to());
    }

    private static IllegalArgumentException refused(String message, Object value, Object place) {
        return new IllegalArgumentException(message.formatted(value, place));
    }
}
