// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import drumfall.solver.power.pendulum.BobPlace;
import drumfall.solver.power.pendulum.BodyShape;
import drumfall.solver.power.pendulum.CompoundPendulum;
import drumfall.solver.power.pendulum.PendulumPart;
import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.quantity.QuantityFormat;
import drumfall.solver.quantity.UnitSystem;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;

/** The pendulum's bob and rod, and what is asked of them. */
final class BobChoice {
    @Option(names = "--bob", paramLabel = "MASS", converter = Given.Mass.class, descriptionKey = "option.bob")
    private Quantity bob;

    @Option(
            names = "--bob-shape",
            paramLabel = "SHAPE",
            converter = BobShapeName.Reader.class,
            descriptionKey = "option.bob-shape")
    private BobShapeName shape;

    @Option(
            names = "--bob-diameter",
            paramLabel = "LENGTH",
            converter = Given.Length.class,
            descriptionKey = "option.bob-diameter")
    private Quantity diameter;

    @Option(
            names = "--bob-thickness",
            paramLabel = "LENGTH",
            converter = Given.Length.class,
            descriptionKey = "option.bob-thickness")
    private Quantity thickness;

    @Option(names = "--rod", paramLabel = "MASS", converter = Given.Mass.class, descriptionKey = "option.rod")
    private Quantity rod;

    @Option(
            names = "--rod-length",
            paramLabel = "LENGTH",
            converter = Given.Length.class,
            descriptionKey = "option.rod-length")
    private Quantity rodLength;

    @Option(
            names = "--nut-pitch",
            paramLabel = "LENGTH",
            converter = Given.Length.class,
            descriptionKey = "option.nut-pitch")
    private Quantity nutPitch;

    @Option(names = "--added", paramLabel = "MASS", converter = Given.Mass.class, descriptionKey = "option.added")
    private Quantity added;

    @Option(
            names = "--added-at",
            paramLabel = "LENGTH",
            converter = Given.Length.class,
            descriptionKey = "option.added-at")
    private Quantity addedAt;

    Optional<Quantity> nutPitch() {
        return Optional.ofNullable(nutPitch);
    }

    Optional<Quantity> added() {
        return Optional.ofNullable(added);
    }

    double addedAt() {
        return addedAt.si();
    }

    /** The pendulum of an equivalent length; empty if no bob is given. */
    Optional<CompoundPendulum> pendulum(double length) {
        together();
        if (bob == null) {
            return Optional.empty();
        }
        BodyShape body = (shape == null ? BobShapeName.POINT : shape).sized(diameter, thickness);
        boolean toTheBob = rod != null && rodLength == null;
        List<PendulumPart> fixed = rodLength == null ? List.of() : List.of(fixedRod());
        Optional<CompoundPendulum> found = toTheBob
                ? BobPlace.onRodToTheBob(length, bob.si(), body, rod.si())
                : BobPlace.of(length, bob.si(), body, fixed);
        if (found.isEmpty()) {
            double shortest = toTheBob
                    ? BobPlace.shortestOnRodToTheBob(bob.si(), body, rod.si())
                    : BobPlace.shortest(bob.si(), body, fixed);
            QuantityFormat up = QuantityFormat.in(UnitSystem.METRIC)
                    .withSignificantDigits(4)
                    .roundingUp();
            throw RefusedInput.of(
                    "bob-place",
                    up.format(Quantity.ofSi(Dimension.LENGTH, length)),
                    up.format(Quantity.ofSi(Dimension.LENGTH, shortest)));
        }
        return found;
    }

    private PendulumPart fixedRod() {
        double metres = rodLength.si();
        return new PendulumPart(rod.si(), new BodyShape.ThinRod(metres), metres / 2);
    }

    /** Refuses what means nothing without something else. */
    private void together() {
        needs("--bob-shape", shape, "--bob", bob);
        needs("--bob-diameter", diameter, "--bob-shape", shape);
        needs("--bob-thickness", thickness, "--bob-shape", shape);
        needs("--rod", rod, "--bob", bob);
        needs("--rod-length", rodLength, "--rod", rod);
        needs("--nut-pitch", nutPitch, "--bob", bob);
        needs("--added", added, "--bob", bob);
        needs("--added", added, "--added-at", addedAt);
        needs("--added-at", addedAt, "--added", added);
    }

    static void needs(String option, Object given, String needed, Object there) {
        if (given != null && there == null) {
            throw RefusedInput.of("needs", option, needed);
        }
    }
}
