// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.brief;

import static drumfall.solver.quantity.Dimension.ANGLE;
import static drumfall.solver.quantity.Dimension.DENSITY;
import static drumfall.solver.quantity.Dimension.FORCE;
import static drumfall.solver.quantity.Dimension.LENGTH;
import static drumfall.solver.quantity.Dimension.MASS;
import static drumfall.solver.quantity.Dimension.NUMBER;
import static drumfall.solver.quantity.Dimension.STRESS;
import static drumfall.solver.quantity.Dimension.TIME;
import static drumfall.solver.quantity.Dimension.TORQUE;

import drumfall.solver.power.escape.EscapementKind;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.sheet.Count;
import drumfall.solver.sheet.Entries;
import drumfall.solver.sheet.Exchange;
import drumfall.solver.sheet.Measure;
import java.util.List;
import java.util.Optional;

/**
 * What the maker demands of a train, group by group, in the maker's own units.
 *
 * @param name what the maker calls it
 * @param run how long one winding lasts
 * @param fall how far the weight may descend
 * @param weight how heavy it may be and with what reserves
 * @param line the line and how it is reeved
 * @param drum sizes the drum may have
 * @param beat what the pendulum's beat must be
 * @param pendulum the pendulum's parts
 * @param escapement the escapement
 * @param teeth tooth form and counts allowed
 * @param train how many meshes, above and below the centre
 * @param arbors builds of the arbors
 * @param parts thicknesses of printed parts
 * @param frame plates and the room between them
 * @param fit how bores, end shake and stock are made to measure
 * @param printer what the printer can do
 * @param material what is printed
 * @param friction coefficients of friction
 * @param hands what the hands ask of the centre arbor
 * @param objectives what makes one train better than another, the first first; at least one
 * @param locks what the maker holds fast
 */
public record Brief(
        String name,
        Run run,
        Fall fall,
        Weight weight,
        Line line,
        Drum drum,
        Beat beat,
        PendulumParts pendulum,
        Escapement escapement,
        Teeth teeth,
        Meshes train,
        Arbors arbors,
        Parts parts,
        Frame frame,
        Fit fit,
        Printer printer,
        Material material,
        Friction friction,
        Hands hands,
        @Entries(from = 1, to = 7) List<Objective> objectives,
        Locks locks) {
    /** Copies the list. */
    public Brief {
        objectives = List.copyOf(objectives);
    }

    /**
     * The same brief with another frame.
     *
     * @param room what there is instead
     */
    public Brief withFrame(Frame room) {
        return Exchange.in(this, "frame", room);
    }

    /**
     * The same brief with other locks.
     *
     * @param held what is held fast instead
     */
    public Brief withLocks(Locks held) {
        return Exchange.in(this, "locks", held);
    }

    /**
     * The same brief with another beat.
     *
     * @param asked what the pendulum's beat must be instead
     */
    public Brief withBeat(Beat asked) {
        return Exchange.in(this, "beat", asked);
    }

    /**
     * The same brief with other bands of friction and quality.
     *
     * @param rubbing friction instead
     * @param quality of the pendulum instead
     */
    public Brief withBands(Friction rubbing, QualityBand quality) {
        PendulumParts swinging = new PendulumParts(pendulum.bobMass(), pendulum.rodMass(), quality, pendulum.bob());
        return Exchange.in(Exchange.in(this, "pendulum", swinging), "friction", rubbing);
    }

    /**
     * The same brief with other builds of the arbors.
     *
     * @param built how the arbors are built instead
     */
    public Brief withArbors(Arbors built) {
        return Exchange.in(this, "arbors", built);
    }

    /**
     * The same brief with its objectives told apart in larger steps.
     *
     * @param times how many times as large, at least 1
     */
    public Brief inSteps(int times) {
        return times == 1
                ? this
                : withObjectives(objectives.stream()
                        .map(objective -> objective.inSteps(times))
                        .toList());
    }

    /**
     * The same brief with other objectives.
     *
     * @param asked what makes one train better than another instead
     */
    public Brief withObjectives(List<Objective> asked) {
        return Exchange.in(this, "objectives", asked);
    }

    /**
     * Duration of one winding.
     *
     * @param atLeast shortest duration that will do
     * @param wanted the duration aimed at
     * @param atMost longest duration that will do
     */
    public record Run(
            @Measure(value = TIME, over = "0 h", to = "800 d")
            Quantity atLeast,

            @Measure(value = TIME, over = "0 h", to = "800 d")
            Quantity wanted,

            @Measure(value = TIME, over = "0 h", to = "800 d")
            Quantity atMost) {}

    /**
     * The weight's way down.
     *
     * @param height it may descend
     * @param topLead line above it when it is fully wound
     * @param tieOff line for knots and fixings
     */
    public record Fall(
            @Measure(value = LENGTH, over = "0 m", to = "50 m")
            Quantity height,

            @Measure(value = LENGTH, from = "0 m", to = "10 m")
            Quantity topLead,

            @Measure(value = LENGTH, from = "0 m", to = "10 m")
            Quantity tieOff) {}

    /**
     * The driving weight.
     *
     * @param limit heaviest weight, its pulley included
     * @param reserve of the recommended weight over the least running weight
     * @param bindingReserve share of the escape wheel's need left with every mesh at its worst at once
     * @param width of the room that the weight and its pulley take as they hang
     * @param builders share of the builders whose clock the recommended weight must run, each with friction and quality of
     *     their own within the brief's bands; not asked if it is absent
     */
    public record Weight(
            @Measure(value = MASS, over = "0 kg", to = "500 kg")
            Quantity limit,

            @Measure(value = NUMBER, from = "0", to = "5") Quantity reserve,
            @Measure(value = NUMBER, from = "0", to = "1") Quantity bindingReserve,

            @Measure(value = LENGTH, over = "0 mm", to = "500 mm")
            Quantity width,

            @Measure(value = NUMBER, over = "0", to = "1") Optional<Quantity> builders) {}

    /**
     * The line and its reeving.
     *
     * @param diameter of the line
     * @param ratedLoad load at which it breaks, by its maker
     * @param safetyFactor rated load over the load hung on it, knots included
     * @param falls falls of line that may carry the weight: 1 hangs straight, 2 passes a pulley
     * @param pulleyEfficiency of the pulley at the weight
     * @param pulley diameter of the pulley at the bottom of its groove
     */
    public record Line(
            @Measure(value = LENGTH, over = "0 mm", to = "20 mm")
            Quantity diameter,

            @Measure(value = FORCE, over = "0 N", to = "100000 N")
            Quantity ratedLoad,

            @Measure(value = NUMBER, from = "1", to = "50") Quantity safetyFactor,

            @Count(from = 1, to = 2) @Entries(from = 1, to = 2)
            List<Integer> falls,

            @Measure(value = NUMBER, over = "0", to = "1") Quantity pulleyEfficiency,

            @Measure(value = LENGTH, over = "0 mm", to = "500 mm")
            Quantity pulley) {
        /** Copies the list. */
        public Line {
            falls = List.copyOf(falls);
        }
    }

    /**
     * The drum.
     *
     * @param diameter sizes it may have
     * @param length between its flanges
     * @param wall thickness of its wall and flanges
     * @param turnSpacing pitch of the line's turns over the line's diameter
     * @param clickSpace room along the arbor for click and ratchet, between great wheel and drum
     * @param side of the great wheel on which it stands
     * @param ratchet the ratchet; in a customary size if it is absent
     */
    public record Drum(
            Steps diameter,

            @Measure(value = LENGTH, over = "0 mm", to = "1 m")
            Quantity length,

            @Measure(value = LENGTH, over = "0 mm", to = "50 mm")
            Quantity wall,

            @Measure(value = NUMBER, from = "1", to = "3") Quantity turnSpacing,

            @Measure(value = LENGTH, from = "0 mm", to = "50 mm")
            Quantity clickSpace,

            DrumSide side,
            Optional<Ratchet> ratchet) {}

    /**
     * Sizes a fixed step apart.
     *
     * @param from the smallest
     * @param to the largest
     * @param step between one and the next
     */
    public record Steps(
            @Measure(value = LENGTH, from = "1 mm", to = "1 m")
            Quantity from,

            @Measure(value = LENGTH, from = "1 mm", to = "1 m")
            Quantity to,

            @Measure(value = LENGTH, from = "0.01 mm", to = "1 m")
            Quantity step) {}

    /**
     * The beat: by the pendulum's length, by beats an hour, or both.
     *
     * @param pendulumLength length of the simple pendulum of the same period
     * @param beatsPerHour beats an hour
     * @param secondsHand whether an arbor must turn once a minute, the same way as the centre
     */
    public record Beat(Optional<LengthRange> pendulumLength, Optional<NumberRange> beatsPerHour, boolean secondsHand) {}

    /**
     * A range of lengths.
     *
     * @param from the smallest
     * @param to the largest
     */
    public record LengthRange(
            @Measure(value = LENGTH, from = "10 mm", to = "20 m")
            Quantity from,

            @Measure(value = LENGTH, from = "10 mm", to = "20 m")
            Quantity to) {}

    /**
     * A range of beats an hour.
     *
     * @param from the fewest
     * @param to the most
     */
    public record NumberRange(
            @Measure(value = NUMBER, from = "100", to = "100000")
            Quantity from,

            @Measure(value = NUMBER, from = "100", to = "100000")
            Quantity to) {}

    /**
     * The pendulum.
     *
     * @param bobMass mass of the bob
     * @param rodMass mass of the rod
     * @param quality quality factor, a band
     * @param bob its shell; printed in a customary size and in a plane that is not known if it is absent
     */
    public record PendulumParts(
            @Measure(value = MASS, over = "0 g", to = "100 kg")
            Quantity bobMass,

            @Measure(value = MASS, from = "0 g", to = "100 kg")
            Quantity rodMass,

            QualityBand quality,
            Optional<BobShell> bob) {}

    /**
     * A band of quality factors.
     *
     * @param low the least to expect
     * @param high the most to expect
     */
    public record QualityBand(
            @Measure(value = NUMBER, from = "1", to = "1000000")
            Quantity low,

            @Measure(value = NUMBER, from = "1", to = "1000000")
            Quantity high) {}

    /**
     * The escapement.
     *
     * @param kind what it is
     * @param teeth counts the escape wheel may have
     * @param wheelRadius of the escape wheel to its tips
     * @param palletSpan largest angle between the locking corners seen from the wheel's centre
     * @param lift impulse angle of the pendulum
     * @param lock depth of lock
     * @param drop free turn of the wheel in a beat
     * @param reserveArc arc asked for beyond the escape angle
     * @param palletArborTorque Coulomb torque of pallet arbor and crutch
     * @param inertiaShare share of the impulse spent on bringing the wheel to speed
     */
    public record Escapement(
            EscapementKind kind,
            CountSteps teeth,

            @Measure(value = LENGTH, over = "0 mm", to = "500 mm")
            Quantity wheelRadius,

            @Measure(value = ANGLE, over = "0 deg", under = "180 deg")
            Quantity palletSpan,

            @Measure(value = ANGLE, over = "0 deg", to = "30 deg")
            Quantity lift,

            @Measure(value = ANGLE, from = "0 deg", to = "10 deg")
            Quantity lock,

            @Measure(value = ANGLE, from = "0 deg", to = "20 deg")
            Quantity drop,

            @Measure(value = ANGLE, from = "0 deg", to = "30 deg")
            Quantity reserveArc,

            @Measure(value = TORQUE, from = "0 N m", to = "1 N m")
            Quantity palletArborTorque,

            @Measure(value = NUMBER, from = "0", under = "1")
            Quantity inertiaShare) {}

    /**
     * Counts a fixed step apart.
     *
     * @param from the fewest
     * @param to the most
     * @param step between one and the next
     */
    public record CountSteps(
            @Count(from = 4, to = 240) int from,
            @Count(from = 4, to = 240) int to,
            @Count(from = 1, to = 240) int step) {}

    /** Tooth forms that can be asked for. */
    public enum ToothForm {
        /** Involute teeth; pressure angle, shifts and addenda are chosen for each mesh. */
        INVOLUTE,
        /** The clockmaker's form: radial leaves with a rounded top, epicycloidal wheel teeth. */
        CYCLOIDAL,
        /** Lantern pinions of round pins and the wheels that drive them. */
        LANTERN
    }

    /**
     * Teeth allowed.
     *
     * @param form tooth form
     * @param pressureAngle of an involute form; chosen among 20, 22.5 and 25 degrees for each mesh if it is absent
     * @param shape what is fixed of their shape; the rest is chosen for each mesh
     * @param thinning taken off every tooth along its pitch circle for backlash, a band
     * @param centreError by how much a printed centre distance may be off, either way
     * @param wheelTeeth counts a wheel may have
     * @param leaves counts a pinion may have
     * @param modules sizes a mesh may have
     */
    public record Teeth(
            ToothForm form,

            @Measure(value = ANGLE, from = "12 deg", to = "34 deg")
            Optional<Quantity> pressureAngle,

            Optional<ToothShape> shape,
            ThinningBand thinning,

            @Measure(value = LENGTH, from = "0 mm", to = "2 mm")
            Quantity centreError,

            WheelRange wheelTeeth,
            LeafRange leaves,

            @Measure(value = LENGTH, from = "0.2 mm", to = "20 mm") @Entries(from = 1, to = 40)
            List<Quantity> modules) {
        /** Copies the list. */
        public Teeth {
            modules = List.copyOf(modules);
        }
    }

    /**
     * A band of thinning, both flanks of a tooth together.
     *
     * @param low the least to expect of the printed tooth
     * @param high the most to expect
     */
    public record ThinningBand(
            @Measure(value = LENGTH, from = "0 mm", to = "2 mm")
            Quantity low,

            @Measure(value = LENGTH, from = "0 mm", to = "2 mm")
            Quantity high) {}

    /**
     * A range of wheel counts.
     *
     * @param from the fewest
     * @param to the most
     */
    public record WheelRange(
            @Count(from = 6, to = 300) int from,
            @Count(from = 6, to = 300) int to) {}

    /**
     * A range of leaf counts.
     *
     * @param from the fewest
     * @param to the most
     */
    public record LeafRange(
            @Count(from = 5, to = 60) int from,
            @Count(from = 5, to = 60) int to) {}

    /**
     * Meshes on either side of the centre arbor.
     *
     * @param above from the drum arbor to the centre arbor
     * @param below from the centre arbor to the escape arbor
     */
    public record Meshes(MeshRange above, MeshRange below) {}

    /**
     * A range of meshes.
     *
     * @param from the fewest
     * @param to the most
     */
    public record MeshRange(
            @Count(from = 1, to = 4) int from,
            @Count(from = 1, to = 4) int to) {}

    /**
     * Builds of the arbors by role.
     *
     * @param drum the drum arbor
     * @param centre the centre arbor
     * @param intermediate every arbor between
     * @param escape the escape arbor
     * @param bearing the rolling bearing used where an arbor has one
     */
    public record Arbors(
            ArborBuild drum, ArborBuild centre, ArborBuild intermediate, ArborBuild escape, Bearing bearing) {}

    /** How an arbor is built. */
    public enum ArborKind {
        /** The printed wheel and pinion turn together on a rod that stands still. */
        FIXED,
        /** The rod turns with them in the plates. */
        TURNING
    }

    /** Which supports of an arbor are rolling bearings. */
    public enum BearingPlaces {
        /** Both supports are plain bores. */
        NONE,
        /** The support behind the dial plate. */
        FRONT,
        /** The support in the back plate. */
        REAR,
        /** Both. */
        BOTH;

        /** How many supports of the two are rolling bearings. */
        public int count() {
            return switch (this) {
                case NONE -> 0;
                case FRONT, REAR -> 1;
                case BOTH -> 2;
            };
        }
    }

    /**
     * One arbor.
     *
     * @param kind how it is built
     * @param diameter of the steel rod
     * @param bearings where it has rolling bearings
     * @param bearing their size, if it is known; their bore is the rod's diameter
     */
    public record ArborBuild(
            ArborKind kind,

            @Measure(value = LENGTH, over = "0 mm", to = "50 mm")
            Quantity diameter,

            BearingPlaces bearings,
            Optional<BearingSize> bearing) {
        /**
         * The same arbor with rolling bearings elsewhere.
         *
         * @param places where it has them instead
         */
        public ArborBuild withBearings(BearingPlaces places) {
            return new ArborBuild(kind, diameter, places, bearing);
        }
    }

    /**
     * Boundary dimensions of a rolling bearing besides its bore.
     *
     * @param outer outer diameter
     * @param width of its rings
     */
    public record BearingSize(
            @Measure(value = LENGTH, over = "0 mm", to = "100 mm")
            Quantity outer,

            @Measure(value = LENGTH, over = "0 mm", to = "100 mm")
            Quantity width) {}

    /**
     * A rolling bearing.
     *
     * @param friction coefficient on the bore radius
     * @param drag torque of grease and seals
     */
    public record Bearing(
            @Measure(value = NUMBER, from = "0", to = "0.1") Quantity friction,

            @Measure(value = TORQUE, from = "0 N m", to = "0.1 N m")
            Quantity drag) {}

    /**
     * Printed parts.
     *
     * @param wheelThickness thickness of a wheel
     * @param pinionLength length of a pinion
     * @param gap least distance between parts that must not touch, across the arbors
     * @param axialGap the same along the arbors
     * @param hubWall of hubs and spacers around a rod
     */
    public record Parts(
            @Measure(value = LENGTH, over = "0 mm", to = "100 mm")
            Quantity wheelThickness,

            @Measure(value = LENGTH, over = "0 mm", to = "100 mm")
            Quantity pinionLength,

            @Measure(value = LENGTH, from = "0 mm", to = "50 mm")
            Quantity gap,

            @Measure(value = LENGTH, from = "0 mm", to = "50 mm")
            Quantity axialGap,

            @Measure(value = LENGTH, from = "0 mm", to = "50 mm")
            Quantity hubWall) {}

    /**
     * Room for the movement.
     *
     * @param width across
     * @param height upright
     * @param depth between the plates
     * @param plate thickness of each plate
     * @param pillars between the plates, none if the frame holds them apart elsewhere
     * @param dialFromLeft the dial centre from the left edge, seen from the dial; left open if it is absent
     * @param dialFromBottom the dial centre from the lower edge; left open if it is absent
     * @param arrangement which of the possible places of the arbors are preferred
     * @param least what of the room that the movement takes is to be made small, if anything is
     */
    public record Frame(
            @Measure(value = LENGTH, over = "0 mm", to = "1 m")
            Quantity width,

            @Measure(value = LENGTH, over = "0 mm", to = "1 m")
            Quantity height,

            @Measure(value = LENGTH, over = "0 mm", to = "500 mm")
            Quantity depth,

            @Measure(value = LENGTH, over = "0 mm", to = "50 mm")
            Quantity plate,

            Optional<FramePillars> pillars,

            @Measure(value = LENGTH, from = "0 mm", to = "1 m")
            Optional<Quantity> dialFromLeft,

            @Measure(value = LENGTH, from = "0 mm", to = "1 m")
            Optional<Quantity> dialFromBottom,

            Arrangement arrangement,

            Optional<LeastRoom> least) {
        /**
         * The same frame with the dial centre in a stated place.
         *
         * @param left from the left edge
         * @param bottom from the lower edge
         */
        public Frame withDial(Quantity left, Quantity bottom) {
            return new Frame(
                    width, height, depth, plate, pillars, Optional.of(left), Optional.of(bottom), arrangement, least);
        }
    }

    /**
     * The printer.
     *
     * @param bedWidth one side of the printable square or rectangle
     * @param bedDepth the other side
     * @param nozzle diameter of the nozzle
     * @param layer height of a layer
     */
    public record Printer(
            @Measure(value = LENGTH, over = "0 mm", to = "5 m")
            Quantity bedWidth,

            @Measure(value = LENGTH, over = "0 mm", to = "5 m")
            Quantity bedDepth,

            @Measure(value = LENGTH, over = "0 mm", to = "5 mm")
            Quantity nozzle,

            @Measure(value = LENGTH, over = "0 mm", to = "2 mm")
            Quantity layer) {}

    /**
     * What is printed.
     *
     * @param name of the material
     * @param density of the printed part
     * @param allowable bending stress that a tooth may bear for years
     */
    public record Material(
            String name,

            @Measure(value = DENSITY, from = "100 kg/m3", to = "20000 kg/m3")
            Quantity density,

            @Measure(value = STRESS, over = "0 MPa", to = "1000 MPa")
            Quantity allowable) {}

    /**
     * Friction, each a band from low to high; figures are computed at the middle of each band and at both ends.
     *
     * @param teeth at the teeth
     * @param bores in plain bores
     * @param pallets at the pallets
     * @param staticFactor static over kinetic friction
     */
    public record Friction(
            FrictionBand teeth,
            FrictionBand bores,
            FrictionBand pallets,
            @Measure(value = NUMBER, from = "1", to = "3") Quantity staticFactor) {}

    /**
     * A band of coefficients of friction.
     *
     * @param low the least to expect
     * @param high the most to expect
     */
    public record FrictionBand(
            @Measure(value = NUMBER, from = "0", to = "2") Quantity low,
            @Measure(value = NUMBER, from = "0", to = "2") Quantity high) {}

    /**
     * The hands.
     *
     * @param torque that motion work and an unbalanced hand ask of the centre arbor at the worst hour
     * @param motionWork whether an hour hand on the centre asks for motion work before the front plate
     */
    public record Hands(
            @Measure(value = TORQUE, from = "0 N m", to = "10 N m")
            Quantity torque,

            boolean motionWork) {}
}
