// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.UnitSystem;
import drumfall.solver.teeth.contact.MeshContact;
import drumfall.solver.teeth.form.ToothForm;
import drumfall.ui.wording.FigureWording;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;

/** One mesh for people. */
final class MeshReport {
    private final MeshFigures mesh;
    private final FigureWording figures;

    MeshReport(MeshFigures mesh, UnitSystem system) {
        this.mesh = mesh;
        this.figures = FigureWording.in(system);
    }

    List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(heading());
        section(lines, "mesh.gears", gears().lines());
        section(lines, "mesh.pair", pair());
        section(lines, "mesh.passed", passed().lines());
        lines.add("  " + binding());
        return lines;
    }

    private static void section(List<String> lines, String key, List<String> body) {
        lines.add("");
        lines.add(Phrases.phrase(key));
        body.forEach(line -> lines.add("  " + line));
    }

    private String heading() {
        String counts = mesh.wish().toothCount() + "/" + mesh.wish().leafCount();
        String family = Phrases.phrase("mesh.form." + mesh.wish().family());
        String friction = figures.plain(mesh.wish().friction().middle());
        OptionalDouble angle = mesh.pressureAngle();
        return angle.isPresent()
                ? Phrases.phrase(
                        "mesh.heading.angle",
                        counts,
                        family,
                        mesh.wish().module(),
                        figures.figure(Dimension.ANGLE, angle.getAsDouble()),
                        friction)
                : Phrases.phrase("mesh.heading", counts, family, mesh.wish().module(), friction);
    }

    private TextTable gears() {
        TextTable table = TextTable.of("mesh.gears.columns");
        row(table, "shift", form -> number(MeshFigures.shift(form)));
        row(table, "addendum", form -> length(mesh.addendum(form)));
        row(table, "tip", form -> length(2 * mesh.tipRadius(form)));
        row(table, "root", form -> diameter(mesh.rootRadius(form)));
        row(table, "base", form -> diameter(mesh.baseRadius(form)));
        row(table, "thickness", form -> length(mesh.thickness(form)));
        row(table, "formFactor", this::formFactor);
        return table;
    }

    private void row(TextTable table, String key, Function<ToothForm, String> figure) {
        String wheel = figure.apply(mesh.wheel());
        String pinion = figure.apply(mesh.pinion());
        if (!(wheel.equals(absent()) && pinion.equals(absent()))) {
            table.row(Phrases.phrase("mesh.gears." + key), wheel, pinion);
        }
    }

    private String formFactor(ToothForm form) {
        double factor = mesh.formFactor(form);
        return Double.isFinite(factor) ? figures.plain(factor) : absent();
    }

    private static String absent() {
        return Phrases.phrase("mesh.absent");
    }

    private String number(OptionalDouble value) {
        return value.isPresent() ? figures.plain(value.getAsDouble()) : absent();
    }

    private String diameter(OptionalDouble radius) {
        return radius.isPresent() ? length(2 * radius.getAsDouble()) : absent();
    }

    private String length(double metres) {
        return figures.figure(Dimension.LENGTH, metres);
    }

    private List<String> pair() {
        double approach = mesh.approachShare();
        return List.of(
                Phrases.phrase("mesh.pair.distance", figures.precise(Dimension.LENGTH, mesh.centreDistance())),
                Phrases.phrase("mesh.pair.ratio", figures.plain(mesh.drawn().contactRatio())),
                Phrases.phrase(
                        "mesh.pair.shares", FigureWording.percent(approach), FigureWording.percent(1 - approach)),
                Phrases.phrase(
                        "mesh.pair.backlash",
                        length(mesh.drawnBacklash()),
                        length(mesh.leastBacklash()),
                        length(mesh.greatestBacklash())),
                Phrases.phrase("mesh.pair.section", length(mesh.printableSection()), length(mesh.thinnestSection())));
    }

    private TextTable passed() {
        TextTable table = TextTable.of("mesh.passed.columns");
        for (double friction : mesh.frictions()) {
            MeshContact contact = mesh.at(friction);
            table.row(
                    figures.plain(friction),
                    FigureWording.percent(contact.mean()),
                    FigureWording.percent(contact.worst()),
                    FigureWording.percent(mesh.worstOverBand(friction)));
        }
        return table;
    }

    private String binding() {
        double most = mesh.wish().friction().high().si();
        double binding = mesh.band().bindingFriction();
        if (!Double.isFinite(binding)) {
            return Phrases.phrase("mesh.binding.never");
        }
        String key = binding > most ? "mesh.binding.reserve" : "mesh.binding.within";
        return Phrases.phrase(
                key,
                figures.plain(binding),
                figures.plain(mesh.drawn().bindingFriction()),
                figures.plain(Math.abs(binding - most)),
                figures.plain(most));
    }
}
