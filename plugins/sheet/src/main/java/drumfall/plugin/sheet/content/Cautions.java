// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.sheet.content;

import java.util.List;

/** What can hurt, and where these figures end; the first thing on every sheet. */
final class Cautions {
    private Cautions() {}

    static Section section() {
        return new Section(
                "Before you begin",
                List.of(
                        new Block.Listing(
                                false,
                                List.of(
                                        "A hanging weight can fall. Use a cord and a hook of a known rating, fix them into"
                                                + " structure, let nothing and nobody be under the weight, and keep"
                                                + " children and animals away.",
                                        "Keep fingers clear of click and key while you wind.",
                                        "Wear eye protection when you drill; hold the part in a clamp, not in the hand.",
                                        "Fill the weight with steel shot where you can. Use lead only sealed, and with"
                                                + " gloves on.",
                                        "Small parts are not for small children. Ventilate the room while you print.")),
                        new Block.Paragraph("The figures on this sheet are design aids, not a certified structural"
                                + " calculation. Fixings follow your local building code; where a wall or a ceiling is"
                                + " in doubt, ask a licensed professional.")));
    }
}
