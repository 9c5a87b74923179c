// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.sheet;

import drumfall.solver.quantity.Dimension;
import java.util.stream.Collectors;

/**
 * The regular expression that texts of one dimension match: a number first and one of the units last.
 *
 * <p>It is necessary, not sufficient: whatever reads as a quantity matches, and most texts with another unit do not.
 */
final class UnitPattern {
    private static final String BLANK = "[\\s\\u00A0\\u1680\\u2000-\\u200A\\u202F\\u205F\\u3000]";

    private UnitPattern() {}

    static String of(Dimension dimension) {
        String units = dimension.units().stream()
                .flatMap(unit -> unit.spellings().stream())
                .filter(spelling -> !spelling.isEmpty())
                .map(UnitPattern::withLookAlikes)
                .collect(Collectors.joining("|"));
        boolean bare = dimension == Dimension.NUMBER;
        return "^BLANK*[-+−]?BLANK*[0-9.¼-¾⅐-⅞↉]([\\s\\S]*[^A-Za-z])?(%s)%sBLANK*$"
                .formatted(units, bare ? "?" : "")
                .replace("BLANK", BLANK);
    }

    /** The typographic signs that are read as their typewriter forms. */
    private static String withLookAlikes(String spelling) {
        return spelling.replace("\"", "[\"″”]")
                .replace("'", "['′’]")
                .replace("µ", "[µμ]")
                .replace("·", "[·⋅∙]")
                .replace(" ", "BLANK+");
    }
}
