// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth;

import drumfall.solver.teeth.choice.ToothFamily;
import drumfall.solver.train.ToothModule;
import java.util.List;
import java.util.Optional;

/**
 * What is asked of the teeth of a whole train; lengths in metres.
 *
 * @param family the family of forms
 * @param pressureAngle of involute teeth, degrees; chosen for each mesh if it is absent
 * @param shape what else is fixed of their shape
 * @param friction coefficient of friction for which teeth are chosen, 0 to 1
 * @param centreError by how much a printed centre distance may be off, either way
 * @param leastThinning least taken off each tooth along its pitch circle
 * @param mostThinning most taken off each tooth
 * @param nozzle width of one extrusion
 * @param modules the modules that may be used, at least one
 */
public record ToothNeeds(
        ToothFamily family,
        Optional<Double> pressureAngle,
        FixedShape shape,
        double friction,
        double centreError,
        double leastThinning,
        double mostThinning,
        double nozzle,
        List<ToothModule> modules) {
    /** Sorts the modules, smallest first. */
    public ToothNeeds {
        modules = modules.stream().sorted().toList();
    }
}
