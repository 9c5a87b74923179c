// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.json.JsonWriteFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintWriter;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.Locale;
import org.apache.commons.numbers.fraction.BigFraction;

/** Writes JSON for machines, in letters that every encoding has. */
final class JsonOutput {
    private static final JsonMapper MAPPER =
            JsonMapper.builder().enable(JsonWriteFeature.ESCAPE_NON_ASCII).build();

    /** Decimals of an hour kept of a duration; a tenth of a second is three hundred-thousandths of an hour. */
    private static final int HOUR_DECIMALS = 6;

    private JsonOutput() {}

    static ObjectNode document(String format) {
        return object().put("format", format).put("version", 1);
    }

    static ObjectNode object() {
        return JsonNodeFactory.instance.objectNode();
    }

    static void print(ObjectNode document, PrintWriter out) {
        try {
            out.print(MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(document) + "\n");
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException("A document of plain fields cannot be written.", impossible);
        }
    }

    /** Puts a figure; one that is not finite becomes null, for which JSON has no number. */
    static void put(ObjectNode group, String field, double figure) {
        group.put(field, Double.isFinite(figure) ? Double.valueOf(figure) : null);
    }

    /** A positive number of hours, rounded down. */
    static BigDecimal hours(BigFraction exact) {
        BigInteger above = exact.getNumerator().abs();
        BigInteger below = exact.getDenominator().abs();
        return new BigDecimal(above).divide(new BigDecimal(below), HOUR_DECIMALS, RoundingMode.FLOOR);
    }

    /** A word of an enum as JSON has it, for example {@code run-at-least}. */
    static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
