// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.wording;

import java.util.List;
import java.util.stream.Stream;

/** What is said wherever the weight of a hanging weight is shown. */
public final class Cautions {
    private Cautions() {}

    /** The cautions about a hanging weight, one sentence or two each, in the order in which they are shown. */
    public static List<String> ofTheHangingWeight() {
        return Stream.of("caution.fall", "caution.under", "caution.aid")
                .map(Words.BOOK::phrase)
                .toList();
    }
}
