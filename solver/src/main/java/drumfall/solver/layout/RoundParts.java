// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout;

import drumfall.solver.layout.size.ArborSize;
import drumfall.solver.layout.size.EscapeSize;
import drumfall.solver.layout.size.MeshSpacing;
import drumfall.solver.layout.size.MotionSize;
import drumfall.solver.layout.size.MovementParts;
import java.util.ArrayList;
import java.util.List;

/** Lists the round parts of a layout. */
final class RoundParts {
    private final Layout layout;
    private final MovementParts parts;
    private final Planes planes;
    private final List<Disc> discs = new ArrayList<>();

    RoundParts(Layout layout) {
        this.layout = layout;
        this.parts = layout.need().parts();
        this.planes = layout.planes();
    }

    List<Disc> all() {
        add(PartKind.DRUM, 0, parts.drum().flangeRadius(), planes.drum());
        for (int arbor = 0; arbor <= parts.escapeArbor(); arbor++) {
            addArbor(arbor);
        }
        EscapeSize escape = parts.escape();
        add(PartKind.PALLETS, parts.palletArbor(), escape.palletRadius(), planes.ofEscape());
        add(PartKind.ROD, parts.palletArbor(), escape.palletRodRadius(), throughPlates());
        parts.motion().ifPresent(this::addMotion);
        return List.copyOf(discs);
    }

    private void addArbor(int arbor) {
        ArborSize size = parts.arbors().get(arbor);
        if (arbor > 0) {
            MeshSpacing driven = parts.meshes().get(arbor - 1);
            add(PartKind.PINION, arbor, driven.pinionTipRadius(), planes.ofPinion(arbor));
            add(PartKind.HUB, arbor, size.hubRadius(), planes.ofHub(arbor));
        }
        if (arbor < parts.escapeArbor()) {
            add(PartKind.WHEEL, arbor, parts.meshes().get(arbor).wheelTipRadius(), planes.ofWheel(arbor));
        } else {
            add(PartKind.ESCAPE_WHEEL, arbor, parts.escape().wheelTipRadius(), planes.ofEscape());
        }
        boolean front = size.reachesFront() || arbor == parts.centreArbor();
        add(PartKind.ROD, arbor, size.rodRadius(), front ? throughMotion() : throughPlates());
    }

    /** The cannon pinion has the hour wheel's spacer before it; the minute pinion's leaves go back to its wheel. */
    private void addMotion(MotionSize motion) {
        int centre = parts.centreArbor();
        int minute = parts.minuteArbor();
        Span first = planes.motion().get(0);
        Span second = planes.motion().get(1);
        add(
                PartKind.CANNON_PINION,
                centre,
                motion.cannonTipRadius(),
                new Span(first.from(), Math.max(first.to(), second.from())));
        add(PartKind.HOUR_WHEEL, centre, motion.hourWheelTipRadius(), second);
        add(PartKind.MINUTE_WHEEL, minute, motion.minuteWheelTipRadius(), first);
        add(
                PartKind.MINUTE_PINION,
                minute,
                motion.minutePinionTipRadius(),
                new Span(Math.min(first.to(), second.to()), second.to()));
        add(PartKind.ROD, minute, motion.studRadius(), new Span(planes.innerDepth(), second.to()));
    }

    private Span throughPlates() {
        long plate = layout.need().envelope().plateThickness();
        return new Span(-plate, planes.innerDepth() + plate);
    }

    private Span throughMotion() {
        long plate = layout.need().envelope().plateThickness();
        return new Span(-plate, planes.depth() - plate);
    }

    private void add(PartKind kind, int arbor, long radius, Span span) {
        discs.add(new Disc(new Part(kind, arbor), layout.place(arbor), radius, span));
    }
}
