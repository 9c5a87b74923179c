// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.sheet.content;

import drumfall.solver.brief.Brief;
import drumfall.solver.train.Mesh;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Arbor by arbor: what it carries, its rod, its bores and the drills for them. */
final class ArborTable {
    private final Clock clock;
    private final Bores bores;

    private ArborTable(Clock clock) {
        this.clock = clock;
        this.bores = new Bores(clock);
    }

    static Section section(Clock clock) {
        ArborTable table = new ArborTable(clock);
        List<List<String>> rows = new ArrayList<>();
        for (int arbor = 0; arbor < clock.arbors(); arbor++) {
            rows.add(table.row(arbor));
        }
        Block.Table arbors = new Block.Table(
                "Arbors from the drum to the escape wheel",
                List.of(
                        new Block.Column("Arbor", 3, false),
                        new Block.Column("Carries", 7, false),
                        new Block.Column("Rod", 2, true),
                        new Block.Column("Runs in", 3.6, false),
                        new Block.Column("Drawn bore", 2.2, true),
                        new Block.Column("Drill", 2, true)),
                rows);
        List<Block> blocks = new ArrayList<>();
        blocks.add(arbors);
        blocks.add(new Block.Paragraph("Bores are drawn so that the drill takes off "
                + clock.lengths().of(clock.brief().fit().skim().si(), 2)
                + ": drill every bore, at low speed, square to the plate. A rolling bearing sits in a"
                + " seat of its outer ring's size with "
                + clock.lengths().of(clock.brief().fit().seatClearance().si(), 2)
                + " on the diameter; measure the bearing that you have."));
        table.hubs().ifPresent(blocks::add);
        return new Section("Arbors, bores and drills", blocks);
    }

    /** Where bearings sit on rods that stand still. */
    private Optional<Block> hubs() {
        boolean any = IntStream.range(0, clock.arbors()).mapToObj(clock::build).anyMatch(ArborTable::rollsOnRod);
        if (!any) {
            return Optional.empty();
        }
        List<String> hubs = clock.builds().needed().stream()
                .filter(place -> rollsOnRod(place.build()))
                .map(place -> "Arbor " + place.arbor() + ", bearing of " + place.size() + ": " + place.seating() + ".")
                .collect(Collectors.toCollection(ArrayList::new));
        hubs.add(
                "A seat that lies on the bed is roofed by the layers above it: print it on supports, and drill it out before"
                        + " the bore.");
        return Optional.of(new Block.Listing(false, hubs));
    }

    private static boolean rollsOnRod(Brief.ArborBuild build) {
        return build.kind() == Brief.ArborKind.FIXED && build.bearings() != Brief.BearingPlaces.NONE;
    }

    private List<String> row(int arbor) {
        Brief.ArborBuild build = clock.build(arbor);
        boolean plain = Bores.plain(build);
        return List.of(
                clock.name(arbor),
                carried(arbor),
                clock.lengths().of(build.diameter().si(), 2),
                supports(build),
                plain ? clock.lengths().ofNanometres(bores.hole(arbor).drawn()) : "bearing",
                plain ? bores.hole(arbor).drill().label() : "bearing");
    }

    private String carried(int arbor) {
        List<String> parts = new ArrayList<>();
        if (arbor == 0) {
            parts.add("drum");
        } else {
            parts.add("pinion of " + mesh(arbor - 1).leafCount());
        }
        if (arbor < clock.arbors() - 1) {
            parts.add("wheel of " + mesh(arbor).toothCount() + ", module "
                    + mesh(arbor).module() + " mm");
        } else {
            parts.add("escape wheel of " + clock.train().escapeTeeth());
        }
        return String.join(", ", parts);
    }

    private Mesh mesh(int index) {
        return clock.train().meshes().get(index);
    }

    private static String supports(Brief.ArborBuild build) {
        if (rollsOnRod(build)) {
            return switch (build.bearings()) {
                case FRONT -> "bearing in the hub's front, on a fixed rod";
                case REAR -> "bearing in the hub's back, on a fixed rod";
                case BOTH, NONE -> "two bearings in the hub, on a fixed rod";
            };
        }
        return switch (build.bearings()) {
            case NONE -> "plain bores";
            case FRONT -> "bearing in front, plain bore at the back";
            case REAR -> "plain bore in front, bearing at the back";
            case BOTH -> "two bearings";
        };
    }
}
