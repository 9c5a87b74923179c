// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.wording;

import drumfall.solver.brief.Brief;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.rating.Demand;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The entries of a brief that make up a demand, as they were typed.
 *
 * @param brief the brief
 */
record BriefEntries(Brief brief) {
    /** The entries in the order in which the demand's phrases speak of them; none for laws of the trade and for locks. */
    List<String> of(Demand demand) {
        return switch (demand) {
            case RUN_AT_LEAST -> texts(brief.run().atLeast());
            case RUN_AT_MOST -> texts(brief.run().atMost());
            case SINGLE_LAYER -> texts(brief.drum().length());
            case WEIGHT_LIMIT -> texts(brief.weight().limit());
            case LINE_LOAD -> texts(brief.line().ratedLoad(), brief.line().safetyFactor());
            case BUILDERS -> brief.weight().builders().map(BriefEntries::share).orElse(List.of());
            case PENDULUM_LENGTH -> pendulumLengths();
            case BEATS_PER_HOUR -> beats();
            case SECONDS_HAND, STEPS_UP, LOCK -> List.of();
            case ARC -> texts(brief.escapement().reserveArc());
            case WHEEL_TEETH ->
                counts(
                        brief.teeth().wheelTeeth().from(),
                        brief.teeth().wheelTeeth().to());
            case LEAVES ->
                counts(brief.teeth().leaves().from(), brief.teeth().leaves().to());
            case MODULE -> List.of(list(brief.teeth().modules()));
            case MESHES -> meshes(brief.train());
            case DRUM_SIZE -> drumSizes(brief.drum().diameter());
            case FALLS -> List.of(list(brief.line().falls()));
            case ESCAPE_TEETH -> escapeTeeth(brief.escapement().teeth());
            case PRINT_BED -> texts(brief.printer().bedWidth(), brief.printer().bedDepth());
            case TOOTH_SIZE -> texts(brief.printer().nozzle());
            case RATCHET, TOOTH_BENDING -> texts(brief.material().allowable());
            case FRAME -> texts(brief.frame().width(), brief.frame().height());
            case CLEARANCE -> texts(brief.parts().gap());
        };
    }

    private List<String> pendulumLengths() {
        return brief.beat()
                .pendulumLength()
                .map(range -> texts(range.from(), range.to()))
                .orElse(List.of());
    }

    private List<String> beats() {
        return brief.beat()
                .beatsPerHour()
                .map(range -> texts(range.from(), range.to()))
                .orElse(List.of());
    }

    private static List<String> meshes(Brief.Meshes meshes) {
        return counts(
                meshes.above().from(),
                meshes.above().to(),
                meshes.below().from(),
                meshes.below().to());
    }

    private static List<String> drumSizes(Brief.Steps steps) {
        return texts(steps.from(), steps.to(), steps.step());
    }

    private static List<String> escapeTeeth(Brief.CountSteps steps) {
        return counts(steps.from(), steps.to(), steps.step());
    }

    private static List<String> texts(Quantity... entries) {
        return Stream.of(entries).map(Quantity::text).toList();
    }

    private static List<String> share(Quantity typed) {
        return List.of(FigureWording.exactPercent(BigDecimal.valueOf(typed.si())));
    }

    private static List<String> counts(Integer... entries) {
        return Stream.of(entries).map(String::valueOf).toList();
    }

    private static String list(List<?> entries) {
        return entries.stream().map(String::valueOf).collect(Collectors.joining(", "));
    }
}
