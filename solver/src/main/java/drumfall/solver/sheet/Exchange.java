// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.sheet;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;

/** Records of a sheet with one component exchanged, so that none of the others has to be written down again. */
public final class Exchange {
    private Exchange() {}

    /**
     * A record that differs in one component.
     *
     * @param record public, as records of sheets are
     * @param component name of what is exchanged
     * @param value what stands there instead
     * @throws IllegalArgumentException if the record has no such component, or the value is none for it
     */
    public static <R extends Record> R in(R record, String component, Object value) {
        RecordComponent[] components = record.getClass().getRecordComponents();
        List<String> names =
                Arrays.stream(components).map(RecordComponent::getName).toList();
        int index = names.indexOf(component);
        if (index < 0) {
            throw new IllegalArgumentException("The component (%s) must be one of %s. Maybe it was renamed."
                    .formatted(component, String.join(", ", names)));
        }
        Class<?>[] types =
                Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
        try {
            Object[] values = new Object[components.length];
            for (int i = 0; i < values.length; i++) {
                values[i] = i == index ? value : components[i].getAccessor().invoke(record);
            }
            @SuppressWarnings("unchecked")
            Class<R> type = (Class<R>) record.getClass();
            return type.getConstructor(types).newInstance(values);
        } catch (InvocationTargetException refused) {
            if (refused.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            throw new IllegalStateException(refused);
        } catch (ReflectiveOperationException hidden) {
            throw new IllegalStateException(hidden);
        }
    }
}
