// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.brief;

import drumfall.solver.quantity.Quantity;
import drumfall.solver.sheet.SheetProblem;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What is asked of the teeth can be had together. */
final class ToothRules {
    /** Smallest angle among which one is chosen if the brief gives none, rad. */
    private static final double SMALLEST_CHOICE = Math.toRadians(20);

    private ToothRules() {}

    static Stream<SheetProblem> pressureAngleIsOfInvolutes(Brief brief) {
        return brief.teeth().pressureAngle().stream()
                .flatMap(angle -> Clash.unless(
                        brief.teeth().form() == Brief.ToothForm.INVOLUTE,
                        "/teeth/pressureAngle",
                        angle,
                        "only involute teeth have a pressure angle",
                        "remove it or ask for the form \"involute\""));
    }

    static Stream<SheetProblem> shapeIsOfItsForm(Brief brief) {
        Brief.ToothForm form = brief.teeth().form();
        return brief.teeth().shape().stream()
                .flatMap(shape -> Stream.of(
                                of(form, "pinionShift", shape.pinionShift(), Brief.ToothForm.INVOLUTE),
                                of(form, "wheelAddendum", shape.wheelAddendum(), Brief.ToothForm.INVOLUTE),
                                of(
                                        form,
                                        "pinionAddendum",
                                        shape.pinionAddendum(),
                                        Brief.ToothForm.INVOLUTE,
                                        Brief.ToothForm.CYCLOIDAL),
                                of(form, "practicalAddendum", shape.practicalAddendum(), Brief.ToothForm.CYCLOIDAL),
                                of(form, "wheelThickness", shape.wheelThickness(), Brief.ToothForm.CYCLOIDAL),
                                of(form, "leafThickness", shape.leafThickness(), Brief.ToothForm.CYCLOIDAL),
                                of(form, "pinDiameter", shape.pinDiameter(), Brief.ToothForm.LANTERN))
                        .flatMap(problems -> problems));
    }

    private static Stream<SheetProblem> of(
            Brief.ToothForm form, String field, Optional<Quantity> value, Brief.ToothForm... forms) {
        String words = Stream.of(forms)
                .map(each -> each.name().toLowerCase(Locale.ROOT))
                .collect(Collectors.joining(" and "));
        return value.stream()
                .flatMap(given -> Clash.unless(
                        List.of(forms).contains(form),
                        "/teeth/shape/" + field,
                        given,
                        "only " + words + " teeth have such a figure",
                        "remove it or ask for another form"));
    }

    /**
     * Without shifted centres an involute pair has no backlash as drawn. Both gears thinned by {@code t} may come closer by
     * {@code e} if {@code t >= e tan α}: what closer centres take along the line of action, {@code 2 e sin α} at most,
     * against {@code 2 t cos α}.
     */
    static Stream<SheetProblem> thinningLetsTeethPassAtTheClosestCentres(Brief brief) {
        Brief.Teeth teeth = brief.teeth();
        double angle = teeth.pressureAngle().map(Quantity::si).orElse(SMALLEST_CHOICE);
        double least = teeth.centreError().si() * Math.tan(angle);
        return Clash.unless(
                teeth.form() != Brief.ToothForm.INVOLUTE
                        || teeth.thinning().low().si() >= least,
                "/teeth/thinning/low",
                teeth.thinning().low(),
                "teeth must be thinned by at least %.3f mm to pass when the centres are \"%s\" too close"
                        .formatted(Math.ceil(least * 1e6) / 1000, teeth.centreError()),
                "thin them more or print the centres truer");
    }
}
