// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.kit;

import drumfall.solver.brief.Brief;
import drumfall.solver.fit.cutting.RodPlan;
import drumfall.solver.making.Bob;
import drumfall.solver.making.MakingSizes;
import drumfall.solver.making.MovementPart;
import drumfall.solver.train.DrumRun;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
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
        items.add(bobShot());
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

    /** Those that the brief asks for, and apart from them those that are recommended besides. */
    private void bearings(List<Item> items) {
        Builds builds = kit.builds();
        String drag = "drag at most " + brief.arbors().bearing().drag() + ": wash out thick grease";
        addBearings("ball bearing", drag, builds.needed(), items);
        addBearings(
                "ball bearing (recommended besides)",
                "not in the brief; " + lighter(builds) + "; " + drag,
                builds.recommended(),
                items);
    }

    private static String lighter(Builds builds) {
        return "least weight with the recommended bearings "
                + weight(builds.build(BuildWay.RECOMMENDED)) + ", as the brief says "
                + weight(builds.build(BuildWay.AS_GIVEN));
    }

    private static String weight(Build build) {
        double least = build.leastWeight();
        return Double.isFinite(least) ? BigDecimal.valueOf(least).setScale(3, RoundingMode.HALF_UP) + " kg" : "none";
    }

    private void addBearings(String what, String why, List<BearingPlace> places, List<Item> items) {
        places.stream()
                .collect(Collectors.groupingBy(
                        place -> List.of(place.size(), place.seating()), LinkedHashMap::new, Collectors.toList()))
                .forEach((kind, alike) -> {
                    int count = alike.stream().mapToInt(BearingPlace::count).sum();
                    String arbors = alike.stream()
                            .map(place -> "arbor " + place.arbor())
                            .collect(Collectors.joining(" and "));
                    items.add(new Item(
                            what,
                            kind.get(0),
                            Integer.toString(count),
                            Integer.toString(clocks * count),
                            arbors + "; " + kind.get(1) + "; " + why));
                });
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

    /** A shell of the brief's own mass takes none, but is named with it. */
    private Item bobShot() {
        Bob bob = kit.bob();
        return new Item(
                "steel shot for the bob",
                up(1e6 * bob.shotVolume(), 0) + " cm³",
                up(1e3 * bob.shot(), 0) + " g",
                up(1e3 * clocks * bob.shot(), 0) + " g",
                "with " + up(1e3 * bob.printed(), 0) + " g of printed shell it is the brief's "
                        + brief.pendulum().bobMass() + "; weigh it");
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
