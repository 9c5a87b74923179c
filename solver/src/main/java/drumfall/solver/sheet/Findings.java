// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.sheet;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;

/** Collects what is wrong with one sheet while it is read. */
final class Findings {
    private final List<SheetProblem> problems = new ArrayList<>();

    void add(Place place, JsonNode value, String rule, String remedy) {
        problems.add(new SheetProblem(place.pointer(), SheetProblem.shown(value), rule, remedy));
    }

    void add(Place place, String value, String rule, String remedy) {
        problems.add(new SheetProblem(place.pointer(), value, rule, remedy));
    }

    /** A node of the wrong JSON type. */
    void wrongType(Place place, JsonNode value, Shape shape) {
        add(place, value, "it must be " + shape.noun(), shape.advice());
    }

    List<SheetProblem> problems() {
        return List.copyOf(problems);
    }
}
