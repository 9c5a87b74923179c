// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.sheet;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.IntNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigInteger;
import java.util.List;
import java.util.Optional;

/**
 * A whole number.
 *
 * @param from the least
 * @param to the greatest
 */
record CountShape(int from, int to) implements Shape {
    @Override
    public Optional<Object> read(JsonNode node, Place place, Findings findings) {
        if (!node.isIntegralNumber()) {
            findings.wrongType(place, node, this);
            return Optional.empty();
        }
        BigInteger number = node.bigIntegerValue();
        if (number.compareTo(BigInteger.valueOf(from)) < 0) {
            findings.add(place, node, "it must be at least " + from, advice());
            return Optional.empty();
        }
        if (number.compareTo(BigInteger.valueOf(to)) > 0) {
            findings.add(place, node, "it must be at most " + to, advice());
            return Optional.empty();
        }
        return Optional.of(number.intValueExact());
    }

    @Override
    public JsonNode write(Object value) {
        return IntNode.valueOf((Integer) value);
    }

    @Override
    public String noun() {
        return "a whole number without quotes or decimals";
    }

    @Override
    public String advice() {
        return "write a whole number from %d to %d".formatted(from, to);
    }

    @Override
    public ObjectNode schema() {
        return JsonText.object().put("type", "integer").put("minimum", from).put("maximum", to);
    }

    @Override
    public void listFields(Place place, Optional<String> optionalAt, List<SheetField> fields) {
        fields.add(SheetField.count(place, optionalAt, from, to));
    }
}
