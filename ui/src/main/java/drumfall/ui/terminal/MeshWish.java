// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import drumfall.solver.quantity.Quantity;
import drumfall.solver.teeth.ContactTeeth;
import drumfall.solver.teeth.FixedShape;
import drumfall.solver.teeth.MeshTeeth;
import drumfall.solver.teeth.ToothNeeds;
import drumfall.solver.teeth.choice.ToothFamily;
import drumfall.solver.train.ToothModule;
import java.util.List;
import java.util.Optional;

/**
 * What is asked of one mesh.
 *
 * @param toothCount teeth of the wheel
 * @param leafCount leaves of the pinion
 * @param family the family of forms
 * @param module the module
 * @param pressureAngle of involute teeth; chosen if it is absent
 * @param friction band of the coefficient; teeth are chosen for its middle
 * @param centreError by how much the centre distance may be off, either way
 * @param thinning band of what is taken off each tooth
 * @param nozzle width of one extrusion
 */
record MeshWish(
        int toothCount,
        int leafCount,
        ToothFamily family,
        ToothModule module,
        Optional<Quantity> pressureAngle,
        QuantitySpan friction,
        Quantity centreError,
        QuantitySpan thinning,
        Quantity nozzle) {
    MeshWish withLeaves(int leaves) {
        return new MeshWish(toothCount, leaves, family, module, pressureAngle, friction, centreError, thinning, nozzle);
    }

    MeshWish withModule(ToothModule other) {
        return new MeshWish(
                toothCount, leafCount, family, other, pressureAngle, friction, centreError, thinning, nozzle);
    }

    MeshWish withAngle(Quantity angle) {
        return new MeshWish(
                toothCount, leafCount, family, module, Optional.of(angle), friction, centreError, thinning, nozzle);
    }

    /** The teeth, if any print and run at the module. */
    Optional<MeshTeeth> teeth() {
        return new ContactTeeth(needs()).teeth(toothCount, leafCount, module);
    }

    private ToothNeeds needs() {
        return new ToothNeeds(
                family,
                pressureAngle.map(angle -> angle.exact().doubleValue()),
                FixedShape.NOTHING,
                friction.middle(),
                centreError.si(),
                thinning.low().si(),
                thinning.high().si(),
                nozzle.si(),
                List.of(module));
    }
}
