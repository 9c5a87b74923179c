// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.kit;

import drumfall.solver.brief.Brief;
import drumfall.solver.fit.cutting.RodPlan;
import drumfall.solver.fitting.FittedArbor;
import drumfall.solver.fitting.PlateHole;
import drumfall.solver.making.MakingSizes;
import drumfall.solver.making.MovementPart;
import drumfall.solver.train.DrumRun;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What is to be bought for a kit; masses, lengths and volumes are rounded up. */
final class Shopping {
    private static final double METRES = 1e-9;

    private final Kit kit;
    private final Brief brief;
    private final int clocks;
    private final MakingSizes sizes = MakingSizes.customary();

    Shopping(Kit kit) {
        this.kit = kit;
        this.brief = kit.brief();
        this.clocks = brief.fit().kits();
    }

    List<Item> items() {
        List<Item> items = new ArrayList<>();
        kit.cutting().ifPresent(plan -> plan.rods().forEach(rod -> items.add(rod(rod))));
        bearings(items);
        items.add(line());
        if (Double.isFinite(kit.rating().recommendedWeight())) {
            items.add(shot());
        }
        items.add(pendulumRod());
        pillars(items);
        drills(items);
        filament(items);
        return items;
    }

    private Item rod(RodPlan plan) {
        String rods = Integer.toString(plan.rods());
        return new Item(
                "steel rod",
                millimetres(plan.stock().diameter()) + " mm × "
                        + millimetres(plan.stock().length()) + " mm",
                "see the cutting list",
                rods,
                plan.provenLeast() ? "arbors; no plan with fewer rods exists" : "arbors");
    }

    private void bearings(List<Item> items) {
        Map<String, Long> counts = new TreeMap<>();
        kit.fitted()
                .ifPresent(movement -> movement.arbors().stream()
                        .flatMap(arbor -> Stream.of(arbor.front(), arbor.back())
                                .flatMap(hole -> hole.stream())
                                .filter(hole -> rolls(hole.use()))
                                .map(hole -> size(arbor, hole)))
                        .forEach(size -> counts.merge(size, 1L, Long::sum)));
        counts.forEach((size, count) -> items.add(new Item(
                "ball bearing",
                size,
                Long.toString(count),
                Long.toString(clocks * count),
                "drag at most " + brief.arbors().bearing().drag() + ": wash out thick grease")));
    }

    private static boolean rolls(PlateHole.Use use) {
        return use == PlateHole.Use.SEAT || use == PlateHole.Use.UNKNOWN_SEAT;
    }

    private static String size(FittedArbor arbor, PlateHole hole) {
        return hole.seat()
                .map(seat -> seat.bearing().name())
                .orElse("bore " + arbor.build().diameter() + "; the brief gives no size");
    }

    private Item line() {
        Brief.Fall fall = brief.fall();
        DrumRun drum = kit.rater()
                .limits()
                .drumRun(
                        kit.rating().train().drumDiameter(),
                        kit.rating().train().reeving());
        double length = drum.lineLength(fall.topLead().si(), fall.tieOff().si());
        return new Item(
                "line",
                brief.line().diameter() + ", rated " + brief.line().ratedLoad() + " or more",
                up(length, 2) + " m",
                up(clocks * length, 2) + " m",
                "drum to weight, knots included");
    }

    private Item shot() {
        double mass = kit.rating().recommendedWeight();
        double litres = 1e3 * mass / sizes.weight().can().shotDensity();
        return new Item(
                "steel shot",
                up(litres, 2) + " litres",
                up(mass, 2) + " kg",
                up(clocks * mass, 2) + " kg",
                "the weight with shell and pulley; steel rather than lead");
    }

    private Item pendulumRod() {
        double length = kit.rating().pendulumLength();
        return new Item(
                "pendulum rod",
                up(1e3 * sizes.pendulum().rod(), 1) + " mm",
                up(1e3 * length * 1.25, 0) + " mm",
                up(1e3 * clocks * length * 1.25, 0) + " mm",
                "a quarter longer than the equivalent length, for suspension and rating nut; cut to time");
    }

    private void pillars(List<Item> items) {
        kit.fitted().filter(movement -> brief.frame().pillars().isPresent()).ifPresent(movement -> {
            double length =
                    METRES * movement.depth() + 2 * brief.frame().plate().si();
            items.add(new Item(
                    "threaded rod M4 with two nuts and washers",
                    up(1e3 * length + 10, 0) + " mm",
                    "4",
                    Integer.toString(4 * clocks),
                    "through pillars and plates"));
        });
    }

    private void drills(List<Item> items) {
        TreeSet<String> labels = kit.holes().stream()
                .flatMap(row -> Stream.of(row.drill(), row.seatDrill()))
                .filter(label -> !label.isEmpty())
                .collect(Collectors.toCollection(TreeSet::new));
        labels.forEach(label -> items.add(new Item("finishing drill", label, "1", "1", "see the hole table")));
    }

    private void filament(List<Item> items) {
        Map<String, Double> masses = kit.parts().stream()
                .collect(Collectors.groupingBy(
                        MovementPart::material,
                        TreeMap::new,
                        Collectors.summingDouble(part -> part.count() * part.mass())));
        masses.forEach((material, mass) -> items.add(new Item(
                "filament",
                material,
                up(1e3 * mass, 0) + " g",
                up(1e3 * clocks * mass, 0) + " g",
                "printed solid, supports and waste not counted")));
    }

    private static String up(double value, int places) {
        return BigDecimal.valueOf(value).setScale(places, RoundingMode.UP).toPlainString();
    }

    static String millimetres(long nanometres) {
        BigDecimal text = BigDecimal.valueOf(nanometres, 6).stripTrailingZeros();
        return text.scale() < 0 ? text.setScale(0).toPlainString() : text.toPlainString();
    }
}
