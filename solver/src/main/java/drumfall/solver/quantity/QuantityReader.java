// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.quantity;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** Reads a signed quantity of one part ("9 1/4 lb") or several ("9 lb 4 oz") into its exact base value. */
final class QuantityReader {
    private record Part(BigFraction amount, Unit unit) {}

    private record Spelling(String text, Unit unit) {}

    private final Dimension dimension;
    private final TextCursor cursor;

    private QuantityReader(Dimension dimension, String typed) {
        this.dimension = dimension;
        this.cursor = new TextCursor(dimension, typed);
    }

    static BigFraction read(Dimension dimension, String typed) {
        if (typed.length() > QuantityLimits.TEXT_LENGTH) {
            throw QuantityFormatException.refused(
                    typed,
                    dimension,
                    "a quantity has at most %d characters and this has %d"
                            .formatted(QuantityLimits.TEXT_LENGTH, typed.length()),
                    QuantityFormatException.remedy(dimension, "1.25"));
        }
        return new QuantityReader(dimension, typed).read();
    }

    private BigFraction read() {
        boolean negative = cursor.take("-");
        if (!negative) {
            cursor.take("+");
        }
        List<Part> parts = new ArrayList<>();
        do {
            parts.add(part());
            requireOrder(parts);
        } while (!cursor.atEnd());
        BigFraction sum = parts.stream()
                .map(part -> part.amount().multiply(part.unit().factor()))
                .reduce(BigFraction.ZERO, BigFraction::add);
        return negative ? sum.negate() : sum;
    }

    private Part part() {
        cursor.skipBlank();
        int start = cursor.position();
        BigFraction amount = new NumberReader(cursor).read();
        String number = cursor.since(start);
        cursor.skipBlank();
        int unitStart = cursor.position();
        Unit unit = longestUnitHere().orElseThrow(() -> unknownUnit(number, unitStart));
        cursor.skipBlank();
        boolean nextPart = cursor.atDigit() || cursor.peek() == '.';
        if (!cursor.atEnd() && !nextPart) {
            throw unknownUnit(number, unitStart);
        }
        return new Part(amount, unit);
    }

    private Optional<Unit> longestUnitHere() {
        int start = cursor.position();
        Comparator<Spelling> longestFirst =
                Comparator.comparing(spelling -> -spelling.text().length());
        return dimension.units().stream()
                .flatMap(unit -> unit.spellings().stream().map(text -> new Spelling(text, unit)))
                .sorted(longestFirst)
                .filter(spelling -> standsAlone(spelling.text(), start))
                .findFirst()
                .map(Spelling::unit);
    }

    /** Takes the spelling if it is here and no longer word runs on from it: "m" does not stand alone in "mx". */
    private boolean standsAlone(String spelling, int start) {
        cursor.returnTo(start);
        if (!cursor.take(spelling)) {
            return false;
        }
        char last = spelling.isEmpty() ? ' ' : spelling.charAt(spelling.length() - 1);
        char next = cursor.peek();
        boolean wordRunsOn = Character.isLetter(last) && Character.isLetter(next);
        boolean numberRunsOn = TextCursor.isDigit(last) && TextCursor.isDigit(next);
        return !wordRunsOn && !numberRunsOn && !(spelling.isEmpty() && !cursor.atEnd());
    }

    private QuantityFormatException unknownUnit(String number, int unitStart) {
        cursor.returnTo(unitStart);
        if (cursor.atEnd()) {
            return cursor.refuse("the unit is missing", QuantityFormatException.remedy(dimension, number));
        }
        if (cursor.atDigit()) {
            return cursor.refuse("two numbers stand side by side without a unit between them");
        }
        String unit =
                cursor.takeWhile(character -> !TextCursor.isDigit(character)).strip();
        return cursor.refuse(
                "the unit \"%s\" is not known".formatted(QuantityFormatException.shown(unit)),
                QuantityFormatException.remedy(dimension, number));
    }

    private void requireOrder(List<Part> parts) {
        if (parts.size() < 2) {
            return;
        }
        Part last = parts.get(parts.size() - 1);
        Part previous = parts.get(parts.size() - 2);
        if (!dimension.takesParts()) {
            throw cursor.refuse("it is written as one number with one unit");
        }
        if (last.unit().factor().compareTo(previous.unit().factor()) >= 0) {
            throw cursor.refuse("its parts must go from the larger unit to the smaller, each once");
        }
        if (!previous.amount().getDenominator().equals(BigInteger.ONE)) {
            throw cursor.refuse("only its last part may hold a fraction");
        }
    }
}
