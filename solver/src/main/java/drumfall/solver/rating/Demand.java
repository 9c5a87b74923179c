// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating;

import drumfall.solver.quantity.Dimension;

/** What a brief demands of a train; each is one claim that a train meets or misses. */
public enum Demand {
    /** The duration reaches the shortest that will do. */
    RUN_AT_LEAST("/run/atLeast", Dimension.TIME),
    /** The duration keeps to the longest that will do. */
    RUN_AT_MOST("/run/atMost", Dimension.TIME),
    /** The line fits the drum in one layer with two safety turns. */
    SINGLE_LAYER("/drum/length", Dimension.LENGTH),
    /** The recommended weight is not too heavy. */
    WEIGHT_LIMIT("/weight/limit", Dimension.MASS),
    /** The line carries its share of the recommended weight with its safety factor. */
    LINE_LOAD("/line/ratedLoad", Dimension.FORCE),
    /** A tooth of the ratchet bears the pull of the line at rest. */
    RATCHET("/drum/ratchet", Dimension.STRESS),
    /** The recommended weight runs the clocks of so many builders as are asked for. */
    BUILDERS("/weight/builders", Dimension.NUMBER),
    /** The pendulum's length is in range. */
    PENDULUM_LENGTH("/beat/pendulumLength", Dimension.LENGTH),
    /** The beats an hour are in range. */
    BEATS_PER_HOUR("/beat/beatsPerHour", Dimension.NUMBER),
    /** An arbor turns once a minute, the same way as the centre. */
    SECONDS_HAND("/beat/secondsHand", Dimension.NUMBER),
    /** The escapement exists and some torque keeps the pendulum at its arc. */
    ARC("/escapement/reserveArc", Dimension.ANGLE),
    /** The wheel's count is in range. */
    WHEEL_TEETH("/teeth/wheelTeeth", Dimension.NUMBER),
    /** The pinion's count is in range. */
    LEAVES("/teeth/leaves", Dimension.NUMBER),
    /** The wheel has at least as many teeth as its pinion has leaves: every mesh steps the speed up. */
    STEPS_UP("/teeth/wheelTeeth", Dimension.NUMBER),
    /** The module is one of the brief's. */
    MODULE("/teeth/modules", Dimension.LENGTH),
    /** The number of meshes on each side of the centre is in range. */
    MESHES("/train", Dimension.NUMBER),
    /** The drum has one of the brief's sizes. */
    DRUM_SIZE("/drum/diameter", Dimension.LENGTH),
    /** The reeving is one of the brief's. */
    FALLS("/line/falls", Dimension.NUMBER),
    /** The escape wheel has one of the brief's counts. */
    ESCAPE_TEETH("/escapement/teeth", Dimension.NUMBER),
    /** The wheel can be printed in one piece. */
    PRINT_BED("/printer", Dimension.LENGTH),
    /** A pair of teeth exists that runs and is nowhere thinner than two nozzle widths. */
    TOOTH_SIZE("/printer/nozzle", Dimension.LENGTH),
    /** The teeth bear the recommended weight, the whole force on one tooth. */
    TOOTH_BENDING("/material/allowable", Dimension.STRESS),
    /** A wheel and its pinion find room in the frame at their centre distance, whichever way they lie. */
    FRAME("/frame", Dimension.LENGTH),
    /** A wheel, a drum flange or the escape wheel clears the neighbouring arbor that crosses its plane. */
    CLEARANCE("/parts/gap", Dimension.LENGTH),
    /** What the maker holds fast is as held. */
    LOCK("/locks", Dimension.NUMBER);

    private final String pointer;
    private final Dimension dimension;

    Demand(String pointer, Dimension dimension) {
        this.pointer = pointer;
        this.dimension = dimension;
    }

    /** JSON pointer of the group or field of the brief that makes the demand. */
    public String pointer() {
        return pointer;
    }

    /** What figure and limit measure. */
    public Dimension dimension() {
        return dimension;
    }
}
