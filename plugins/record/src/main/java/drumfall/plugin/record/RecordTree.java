// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.record;

import com.fasterxml.jackson.core.JsonGenerator;
import drumfall.solver.quantity.Quantity;
import java.io.IOException;
import java.lang.reflect.RecordComponent;
import java.util.List;
import java.util.Optional;

/** Writes any record of the brief by the names of its components, quantities as typed, absent parts left out. */
final class RecordTree {
    private final JsonGenerator json;

    RecordTree(JsonGenerator json) {
        this.json = json;
    }

    void write(Object value) throws IOException {
        if (value instanceof Quantity quantity) {
            json.writeString(quantity.text());
        } else if (value instanceof Record group) {
            group(group);
        } else if (value instanceof List<?> list) {
            list(list);
        } else if (value instanceof Enum<?> constant) {
            json.writeString(JsonFields.word(constant));
        } else {
            plain(value);
        }
    }

    private void group(Record group) throws IOException {
        json.writeStartObject();
        for (RecordComponent component : group.getClass().getRecordComponents()) {
            Object value = value(group, component);
            if (value instanceof Optional<?> optional) {
                value = optional.orElse(null);
            }
            if (value != null) {
                json.writeFieldName(component.getName());
                write(value);
            }
        }
        json.writeEndObject();
    }

    private static Object value(Record group, RecordComponent component) {
        try {
            return component.getAccessor().invoke(group);
        } catch (ReflectiveOperationException hidden) {
            throw new IllegalStateException(
                    "The component (%s) of a brief must be readable.".formatted(component.getName()), hidden);
        }
    }

    private void list(List<?> list) throws IOException {
        json.writeStartArray();
        for (Object entry : list) {
            write(entry);
        }
        json.writeEndArray();
    }

    private void plain(Object value) throws IOException {
        if (value instanceof Integer count) {
            json.writeNumber(count);
        } else if (value instanceof Boolean flag) {
            json.writeBoolean(flag);
        } else if (value instanceof String text) {
            json.writeString(text);
        } else {
            throw new IllegalStateException(
                    "The type (%s) of a component of a brief must be a known one. Maybe the brief has grown."
                            .formatted(value.getClass().getName()));
        }
    }
}
