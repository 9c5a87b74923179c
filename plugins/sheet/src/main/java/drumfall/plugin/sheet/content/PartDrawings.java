// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.sheet.content;

import drumfall.plugin.sheet.draw.Drawing;
import drumfall.plugin.sheet.draw.PartList;
import java.util.List;

/** What comes from the printer, small. */
final class PartDrawings {
    private PartDrawings() {}

    static Section section(Clock clock) {
        return new Section("Printed parts", blocks(clock));
    }

    private static List<Block> blocks(Clock clock) {
        try {
            List<Drawing> drawings = PartList.of(clock.handover()).stream()
                    .filter(part -> !part.teeth().isEmpty() || PartList.large(part))
                    .map(Drawing::of)
                    .toList();
            return List.of(
                    new Block.Paragraph("Seen from above as they lie on the printer's bed, all to one scale."),
                    new Block.Figures(drawings, 3));
        } catch (IllegalArgumentException refused) {
            return List.of(new Block.Paragraph("The parts cannot be drawn. " + refused.getMessage()));
        }
    }
}
