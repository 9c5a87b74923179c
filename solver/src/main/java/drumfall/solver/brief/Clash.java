// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.brief;

import drumfall.solver.quantity.Quantity;
import drumfall.solver.sheet.SheetProblem;
import java.util.stream.Stream;

/** Words what is wrong where fields do not agree; a rule that holds gives nothing. */
final class Clash {
    private Clash() {}

    static Stream<SheetProblem> unless(boolean holds, String pointer, Quantity value, String rule, String remedy) {
        return holds ? Stream.empty() : Stream.of(SheetProblem.of(pointer, value, rule, remedy));
    }

    static Stream<SheetProblem> unless(boolean holds, String pointer, String value, String rule, String remedy) {
        return holds ? Stream.empty() : Stream.of(new SheetProblem(pointer, value, rule, remedy));
    }

    /** Two ends of a range of quantities in one group; the upper one is named. */
    static Stream<SheetProblem> ends(String group, String lowName, Quantity low, String highName, Quantity high) {
        return unless(
                low.compareTo(high) <= 0,
                group + "/" + highName,
                high,
                "\"%s\" must not be less than \"%s\" (\"%s\")".formatted(highName, lowName, low),
                swap(lowName, highName));
    }

    /** Two ends of a range of counts in one group; the upper one is named. */
    static Stream<SheetProblem> ends(String group, int from, int to) {
        return unless(
                from <= to,
                group + "/to",
                String.valueOf(to),
                "\"to\" must not be less than \"from\" (%d)".formatted(from),
                swap("from", "to"));
    }

    private static String swap(String lowName, String highName) {
        return "raise \"%s\" or lower \"%s\"".formatted(highName, lowName);
    }
}
