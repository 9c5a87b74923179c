// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.quantity;

import static drumfall.solver.quantity.Dimension.ANGLE;
import static drumfall.solver.quantity.Dimension.AREA;
import static drumfall.solver.quantity.Dimension.DENSITY;
import static drumfall.solver.quantity.Dimension.FORCE;
import static drumfall.solver.quantity.Dimension.LENGTH;
import static drumfall.solver.quantity.Dimension.MASS;
import static drumfall.solver.quantity.Dimension.NUMBER;
import static drumfall.solver.quantity.Dimension.STRESS;
import static drumfall.solver.quantity.Dimension.TIME;
import static drumfall.solver.quantity.Dimension.TORQUE;
import static drumfall.solver.quantity.ExactFactors.INCH;
import static drumfall.solver.quantity.ExactFactors.OUNCE;
import static drumfall.solver.quantity.ExactFactors.OUNCE_FORCE;
import static drumfall.solver.quantity.ExactFactors.PI;
import static drumfall.solver.quantity.ExactFactors.POUND;
import static drumfall.solver.quantity.ExactFactors.POUND_FORCE;
import static drumfall.solver.quantity.ExactFactors.STANDARD_GRAVITY;
import static drumfall.solver.quantity.ExactFactors.decimal;
import static drumfall.solver.quantity.Unit.exactly;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/** Every unit that may be typed, with its factor to the base unit of its dimension. */
final class UnitTable {
    private static final BigFraction ONE = BigFraction.ONE;

    private static final Map<Dimension, List<Unit>> UNITS = Stream.of(
                    lengths(),
                    areas(),
                    masses(),
                    times(),
                    angles(),
                    forces(),
                    torques(),
                    densities(),
                    stresses(),
                    numbers())
            .flatMap(List::stream)
            .sorted(Comparator.comparing(Unit::factor))
            .collect(Collectors.groupingBy(
                    Unit::dimension, () -> new EnumMap<>(Dimension.class), Collectors.toUnmodifiableList()));

    private static final Map<Dimension, Unit> BASE_UNITS = UNITS.values().stream()
            .flatMap(List::stream)
            .filter(unit -> unit.factor().isOne())
            .collect(Collectors.toUnmodifiableMap(Unit::dimension, Function.identity()));

    private UnitTable() {}

    static List<Unit> unitsOf(Dimension dimension) {
        return UNITS.get(dimension);
    }

    static Unit baseUnitOf(Dimension dimension) {
        return BASE_UNITS.get(dimension);
    }

    private static List<Unit> lengths() {
        return List.of(
                exactly(LENGTH, decimal("1e-6"), "µm", "um"),
                exactly(LENGTH, decimal("0.001"), "mm"),
                exactly(LENGTH, decimal("0.01"), "cm"),
                exactly(LENGTH, ONE, "m"),
                exactly(LENGTH, INCH, "in", "\"", "inch", "inches"),
                exactly(LENGTH, INCH.multiply(12), "ft", "'", "foot", "feet"));
    }

    private static List<Unit> areas() {
        return List.of(
                exactly(AREA, decimal("1e-6"), "mm²", "mm2"),
                exactly(AREA, decimal("1e-4"), "cm²", "cm2"),
                exactly(AREA, INCH.pow(2), "in²", "in2"),
                exactly(AREA, ONE, "m²", "m2"));
    }

    private static List<Unit> masses() {
        return List.of(
                exactly(MASS, decimal("0.001"), "g"),
                exactly(MASS, ONE, "kg"),
                exactly(MASS, OUNCE, "oz"),
                exactly(MASS, POUND, "lb", "lbs"));
    }

    private static List<Unit> times() {
        return List.of(
                exactly(TIME, ONE, "s", "sec", "second", "seconds"),
                exactly(TIME, BigFraction.of(60), "min", "minute", "minutes"),
                exactly(TIME, BigFraction.of(3600), "h", "hour", "hours"),
                exactly(TIME, BigFraction.of(86_400), "d", "day", "days"),
                exactly(TIME, BigFraction.of(604_800), "week", "weeks"));
    }

    private static List<Unit> angles() {
        BigFraction degreesInRadian = BigFraction.of(180).divide(PI);
        return List.of(
                exactly(ANGLE, BigFraction.of(1, 60), "arcmin", "'", "min"),
                exactly(ANGLE, ONE, "°", "deg", "degree", "degrees"),
                new Unit(ANGLE, "rad", degreesInRadian, false, List.of("rad")));
    }

    private static List<Unit> forces() {
        return List.of(
                exactly(FORCE, STANDARD_GRAVITY.divide(1000), "gf"),
                exactly(FORCE, OUNCE_FORCE, "ozf"),
                exactly(FORCE, ONE, "N"),
                exactly(FORCE, POUND_FORCE, "lbf"),
                exactly(FORCE, STANDARD_GRAVITY, "kgf"));
    }

    private static List<Unit> torques() {
        return List.of(
                exactly(TORQUE, STANDARD_GRAVITY.multiply(decimal("1e-5")), "gf cm", "gf·cm"),
                exactly(TORQUE, decimal("0.001"), "N mm", "N·mm", "Nmm", "mN m", "mN·m", "mNm"),
                exactly(TORQUE, OUNCE_FORCE.multiply(INCH), "ozf in", "ozf·in"),
                exactly(TORQUE, POUND_FORCE.multiply(INCH), "lbf in", "lbf·in"),
                exactly(TORQUE, ONE, "N m", "N·m", "Nm"));
    }

    private static List<Unit> densities() {
        BigFraction cubicInch = INCH.pow(3);
        return List.of(
                exactly(DENSITY, ONE, "kg/m³", "kg/m3"),
                exactly(DENSITY, BigFraction.of(1000), "g/cm³", "g/cm3"),
                exactly(DENSITY, POUND.divide(cubicInch), "lb/in³", "lb/in3"));
    }

    private static List<Unit> stresses() {
        return List.of(
                exactly(STRESS, ONE, "Pa"),
                exactly(STRESS, BigFraction.of(1000), "kPa"),
                exactly(STRESS, POUND_FORCE.divide(INCH.pow(2)), "psi"),
                exactly(STRESS, BigFraction.of(1_000_000), "MPa"),
                exactly(STRESS, BigFraction.of(1_000_000_000), "GPa"));
    }

    private static List<Unit> numbers() {
        return List.of(exactly(NUMBER, BigFraction.of(1, 100), "%", "percent"), exactly(NUMBER, ONE, ""));
    }
}
