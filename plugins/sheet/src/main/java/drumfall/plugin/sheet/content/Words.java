// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.sheet.content;

import drumfall.solver.fit.Nanometres;
import drumfall.solver.quantity.Quantity;
import java.util.Locale;

/** Figures as they stand on the sheet: digits that a builder can use, with their unit. */
final class Words {
    private Words() {}

    static String number(double value, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }

    /** Under 10 kg to the gram, above to ten. */
    static String kilograms(double mass) {
        return Double.isInfinite(mass) ? "no weight" : number(mass, mass < 10 ? 3 : 2) + " kg";
    }

    static String degrees(double radians) {
        return number(Math.toDegrees(radians), 2) + "\u00b0";
    }

    static String seconds(double seconds) {
        return number(seconds, 1) + " s";
    }

    static String percent(double share) {
        return number(100 * share, 1) + " %";
    }

    static long nanometres(Quantity length) {
        return Nanometres.exact(length.exact());
    }

    /** What a maker typed without what no page can show. */
    static String printable(String typed) {
        return typed.codePoints()
                .map(point -> Character.isISOControl(point)
                                || !Character.isDefined(point)
                                || (point >= Character.MIN_SURROGATE && point <= Character.MAX_SURROGATE)
                                || (point & 0xFFFE) == 0xFFFE
                        ? ' '
                        : point)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }
}
