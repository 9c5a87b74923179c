// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.place;

import drumfall.solver.layout.Part;
import drumfall.solver.layout.PartKind;
import drumfall.solver.layout.size.ArborSize;
import drumfall.solver.layout.size.MeshSpacing;
import drumfall.solver.layout.size.MotionSize;
import drumfall.solver.layout.size.MovementParts;
import java.util.ArrayList;
import java.util.List;

/** The round parts of each arbor. */
final class ItemList {
    private final MovementParts parts;
    private final Slots slots;
    private final List<List<Item>> byArbor = new ArrayList<>();

    private ItemList(MovementParts parts, Slots slots) {
        this.parts = parts;
        this.slots = slots;
    }

    static List<List<Item>> of(MovementParts parts, Slots slots) {
        return new ItemList(parts, slots).build();
    }

    private List<List<Item>> build() {
        for (int arbor = 0; arbor <= parts.escapeArbor(); arbor++) {
            byArbor.add(new ArrayList<>());
            addGears(arbor);
            addRod(arbor);
        }
        add(0, PartKind.DRUM, parts.drum().flangeRadius(), Slots.DRUM);
        int escapePlane = slots.plane(parts.meshes().size());
        add(parts.escapeArbor(), PartKind.ESCAPE_WHEEL, parts.escape().wheelTipRadius(), escapePlane);
        byArbor.add(new ArrayList<>());
        add(parts.palletArbor(), PartKind.PALLETS, parts.escape().palletRadius(), escapePlane);
        add(parts.palletArbor(), PartKind.ROD, parts.escape().palletRodRadius(), Slots.ROD);
        parts.motion().ifPresent(this::addMotion);
        return byArbor;
    }

    private void addGears(int arbor) {
        if (arbor > 0) {
            MeshSpacing driven = parts.meshes().get(arbor - 1);
            add(arbor, PartKind.PINION, driven.pinionTipRadius(), slots.plane(arbor - 1));
            add(arbor, PartKind.HUB, parts.arbors().get(arbor).hubRadius(), slots.hub(arbor));
        }
        if (arbor < parts.escapeArbor()) {
            add(arbor, PartKind.WHEEL, parts.meshes().get(arbor).wheelTipRadius(), slots.plane(arbor));
        }
    }

    private void addRod(int arbor) {
        ArborSize size = parts.arbors().get(arbor);
        boolean front = size.reachesFront() || arbor == parts.centreArbor();
        add(arbor, PartKind.ROD, size.rodRadius(), front ? Slots.LONG_ROD : Slots.ROD);
    }

    private void addMotion(MotionSize motion) {
        byArbor.add(new ArrayList<>());
        add(parts.centreArbor(), PartKind.CANNON_PINION, motion.cannonTipRadius(), Slots.FIRST_MOTION);
        add(parts.centreArbor(), PartKind.HOUR_WHEEL, motion.hourWheelTipRadius(), Slots.SECOND_MOTION);
        add(parts.minuteArbor(), PartKind.MINUTE_WHEEL, motion.minuteWheelTipRadius(), Slots.FIRST_MOTION);
        add(parts.minuteArbor(), PartKind.MINUTE_PINION, motion.minutePinionTipRadius(), Slots.SECOND_MOTION);
        add(parts.minuteArbor(), PartKind.ROD, motion.studRadius(), Slots.STUD);
    }

    private void add(int arbor, PartKind kind, long radius, int slot) {
        byArbor.get(arbor).add(new Item(new Part(kind, arbor), radius, slot));
    }
}
