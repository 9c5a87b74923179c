// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.record;

import com.fasterxml.jackson.core.JsonGenerator;
import drumfall.solver.quantity.Dimension;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.Locale;
import org.apache.commons.numbers.fraction.BigFraction;

/** Writes named fields: units in the name, {@code null} for what is not finite, fractions as text. */
final class JsonFields {
    private final JsonGenerator json;

    JsonFields(JsonGenerator json) {
        this.json = json;
    }

    JsonGenerator json() {
        return json;
    }

    void text(String name, String value) throws IOException {
        json.writeStringField(name, value);
    }

    void count(String name, long value) throws IOException {
        json.writeNumberField(name, value);
    }

    void flag(String name, boolean value) throws IOException {
        json.writeBooleanField(name, value);
    }

    void decimal(String name, BigDecimal value) throws IOException {
        json.writeNumberField(name, value);
    }

    /** A figure in SI units; the unit is put behind the name. */
    void figure(String name, Dimension dimension, double value) throws IOException {
        String field = name + unit(dimension);
        if (Double.isFinite(value)) {
            json.writeNumberField(field, value);
        } else {
            json.writeNullField(field);
        }
    }

    void fraction(String name, BigFraction value) throws IOException {
        BigFraction reduced = BigFraction.of(value.getNumerator(), value.getDenominator());
        String denominator =
                reduced.getDenominator().equals(java.math.BigInteger.ONE) ? "" : "/" + reduced.getDenominator();
        json.writeStringField(name, reduced.getNumerator() + denominator);
    }

    void word(String name, Enum<?> value) throws IOException {
        json.writeStringField(name, word(value));
    }

    /** A constant as the brief's file format writes it: lower case with hyphens. */
    static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static String unit(Dimension dimension) {
        return switch (dimension) {
            case LENGTH -> "_m";
            case AREA -> "_m2";
            case MASS -> "_kg";
            case TIME -> "_s";
            case ANGLE -> "_rad";
            case FORCE -> "_N";
            case TORQUE -> "_Nm";
            case DENSITY -> "_kg_per_m3";
            case STRESS -> "_Pa";
            case NUMBER -> "";
        };
    }
}
