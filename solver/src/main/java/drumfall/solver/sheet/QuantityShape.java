// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.sheet;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.quantity.QuantityFormatException;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A number with its unit, typed as text.
 *
 * @param ranges what it may measure, at least one; the first that reads the text decides
 */
record QuantityShape(List<QuantityRange> ranges) implements Shape {
    @Override
    public Optional<Object> read(JsonNode node, Place place, Findings findings) {
        if (!node.isTextual()) {
            findings.wrongType(place, node, this);
            return Optional.empty();
        }
        return parsed(node, place, findings).map(Object.class::cast);
    }

    private Optional<Quantity> parsed(JsonNode node, Place place, Findings findings) {
        for (QuantityRange range : ranges) {
            try {
                Quantity quantity = Quantity.parse(range.dimension(), node.textValue());
                Optional<String> broken = range.brokenBy(quantity);
                broken.ifPresent(bound -> findings.add(place, node, "it must be " + bound, "write " + range.words()));
                return Optional.of(quantity).filter(value -> broken.isEmpty());
            } catch (QuantityFormatException refusal) {
                if (ranges.size() == 1) {
                    refuse(node, place, RefusedQuantity.of(refusal, range.dimension(), node.textValue()), findings);
                    return Optional.empty();
                }
            }
        }
        findings.add(place, node, "it is not " + dimensions(), advice());
        return Optional.empty();
    }

    private void refuse(JsonNode node, Place place, RefusedQuantity refused, Findings findings) {
        if (node.textValue().isBlank()) {
            findings.add(place, node, "the text must not be empty", advice());
        } else {
            findings.add(place, node, refused.rule(), refused.remedy());
        }
    }

    private String dimensions() {
        return ranges.stream()
                .map(QuantityRange::dimension)
                .map(Dimension::noun)
                .collect(Collectors.joining(" or "));
    }

    @Override
    public JsonNode write(Object value) {
        return TextNode.valueOf(((Quantity) value).text());
    }

    @Override
    public String noun() {
        return dimensions() + " written as text in quotes";
    }

    @Override
    public String advice() {
        String example = examples(ranges.get(0).dimension());
        return "write %s in quotes, in the manner of \"%s\""
                .formatted(ranges.stream().map(QuantityRange::words).collect(Collectors.joining(", or ")), example);
    }

    /** How the dimension is written; the number is only a pattern and may lie outside the bounds. */
    private static String examples(Dimension dimension) {
        return dimension == Dimension.NUMBER
                ? "0.5\" or \"50 %"
                : "1.25 " + dimension.baseUnit().symbol();
    }

    @Override
    public ObjectNode schema() {
        ObjectNode schema = JsonText.object();
        if (ranges.size() == 1) {
            refer(schema, ranges.get(0));
        } else {
            ranges.forEach(range -> refer(schema.withArray("anyOf").addObject(), range));
        }
        return schema;
    }

    private static void refer(ObjectNode schema, QuantityRange range) {
        schema.put("$ref", "#/$defs/" + SheetWriter.word(range.dimension())).put("description", range.words());
    }

    @Override
    public void listFields(Place place, Optional<String> optionalAt, List<SheetField> fields) {
        fields.add(SheetField.quantity(place, optionalAt, ranges));
    }
}
