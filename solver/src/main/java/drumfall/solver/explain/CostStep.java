// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.explain;

import drumfall.solver.brief.Brief;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * One figure of a brief eased by as much as a maker might grant.
 *
 * @param easing the figure and the way
 * @param typed what the brief says
 * @param value what it would say
 * @param brief the changed brief
 */
public record CostStep(Easing easing, String typed, String value, Brief brief) {
    /** Figures and changes. Chosen by us as changes worth a thought, no source. */
    private record Grant(String pointer, Easing.Way way, String change) {}

    private static final List<Grant> GRANTS = List.of(
            new Grant("/fall/height", Easing.Way.UP, "50 mm"),
            new Grant("/run/atLeast", Easing.Way.DOWN, "6 h"),
            new Grant("/run/atMost", Easing.Way.UP, "6 h"),
            new Grant("/teeth/leaves/from", Easing.Way.DOWN, "1"),
            new Grant("/teeth/leaves/to", Easing.Way.UP, "1"),
            new Grant("/teeth/wheelTeeth/from", Easing.Way.DOWN, "5"),
            new Grant("/teeth/wheelTeeth/to", Easing.Way.UP, "5"),
            new Grant("/escapement/teeth/from", Easing.Way.DOWN, "1"),
            new Grant("/escapement/teeth/to", Easing.Way.UP, "1"),
            new Grant("/drum/diameter/from", Easing.Way.DOWN, "1 mm"),
            new Grant("/drum/diameter/to", Easing.Way.UP, "1 mm"),
            new Grant("/drum/length", Easing.Way.UP, "5 mm"),
            new Grant("/line/ratedLoad", Easing.Way.UP, "50 N"),
            new Grant("/weight/builders", Easing.Way.DOWN, "5 %"),
            new Grant("/beat/pendulumLength/from", Easing.Way.DOWN, "10 mm"),
            new Grant("/beat/pendulumLength/to", Easing.Way.UP, "10 mm"),
            new Grant("/beat/beatsPerHour/from", Easing.Way.DOWN, "100"),
            new Grant("/beat/beatsPerHour/to", Easing.Way.UP, "100"),
            new Grant("/frame/width", Easing.Way.UP, "10 mm"),
            new Grant("/frame/height", Easing.Way.UP, "10 mm"),
            new Grant("/parts/gap", Easing.Way.DOWN, "0.5 mm"),
            new Grant("/printer/bedWidth", Easing.Way.UP, "10 mm"),
            new Grant("/printer/bedDepth", Easing.Way.UP, "10 mm"),
            new Grant("/printer/nozzle", Easing.Way.DOWN, "0.1 mm"),
            new Grant("/material/allowable", Easing.Way.UP, "1 MPa"));

    /**
     * Every change that leads to a brief in order.
     *
     * @param brief the brief
     */
    public static List<CostStep> of(Brief brief) {
        return GRANTS.stream()
                .flatMap(grant -> Easing.of(brief).stream()
                        .filter(easing -> easing.pointer().equals(grant.pointer) && easing.way() == grant.way)
                        .flatMap(easing -> of(brief, easing, grant.change).stream()))
                .toList();
    }

    private static Optional<CostStep> of(Brief brief, Easing easing, String change) {
        EasingSteps steps = new EasingSteps(brief, easing);
        OptionalInt count = steps.stepsFor(change);
        return count.isEmpty()
                ? Optional.empty()
                : steps.at(count.getAsInt())
                        .map(changed -> new CostStep(easing, steps.text(0), steps.text(count.getAsInt()), changed));
    }
}
