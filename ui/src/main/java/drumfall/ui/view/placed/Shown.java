// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.placed;

import drumfall.solver.layout.Part;
import drumfall.solver.layout.Shortfall;
import drumfall.ui.presenter.PlacedSheet;
import drumfall.ui.presenter.PlacedState.Seen;
import drumfall.ui.presenter.PlacedWords;
import java.util.List;
import java.util.Optional;

/**
 * What a painter is told beside the plan.
 *
 * @param seen layout and train
 * @param words puts figures in the maker's units
 * @param pointed the arbor pointed at
 * @param selected the arbor selected
 * @param faults what clashes while an arbor is drawn
 * @param turn turns of the centre arbor; empty without marks on the wheels
 */
record Shown(
        Seen seen,
        PlacedWords words,
        Optional<Integer> pointed,
        Optional<Integer> selected,
        List<Shortfall> faults,
        Optional<Double> turn) {
    Shown {
        faults = List.copyOf(faults);
    }

    static Optional<Shown> of(PlacedSheet sheet) {
        return sheet.seen()
                .map(seen -> new Shown(
                        seen,
                        sheet.words().orElseThrow(),
                        sheet.pointed(),
                        sheet.selected(),
                        sheet.drag().map(drag -> drag.faults()).orElse(List.of()),
                        Optional.of(sheet.turn()).filter(turn -> sheet.turning() || turn != 0)));
    }

    /** The arbor whose dimensions are shown: the one pointed at, else the one selected. */
    Optional<Integer> measured() {
        return pointed.filter(arbor -> arbor < seen.layout().places().size()).or(() -> selected);
    }

    boolean isChosen(int arbor) {
        return pointed.filter(found -> found == arbor).isPresent()
                || selected.filter(found -> found == arbor).isPresent();
    }

    boolean clashes(Part part) {
        return faults.stream()
                .anyMatch(fault -> fault.first().equals(part)
                        || fault.second().filter(part::equals).isPresent());
    }
}
