// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.ToothShape;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.teeth.ContactTeeth;
import drumfall.solver.teeth.FixedShape;
import drumfall.solver.teeth.MeshLoss;
import drumfall.solver.teeth.MeshTeeth;
import drumfall.solver.teeth.ToothNeeds;
import drumfall.solver.teeth.choice.ToothFamily;
import drumfall.solver.train.ToothModule;
import java.util.Optional;
import java.util.Set;

/** Turns a brief's wishes into the teeth of its meshes. */
final class BriefTeeth {
    private BriefTeeth() {}

    /**
     * The teeth of a brief, chosen for the friction in the middle of its band.
     *
     * @param brief the brief
     * @param waived demands that are taken as met
     */
    static MeshLoss of(Brief brief, Set<Demand> waived) {
        MeshLoss teeth = new ContactTeeth(needs(brief));
        return waived.contains(Demand.TOOTH_SIZE) ? new Unprinted(teeth) : teeth;
    }

    static ToothNeeds needs(Brief brief) {
        Brief.Teeth teeth = brief.teeth();
        return new ToothNeeds(
                family(teeth.form()),
                teeth.pressureAngle().map(angle -> angle.exact().doubleValue()),
                teeth.shape().map(BriefTeeth::fixed).orElse(FixedShape.NOTHING),
                Expectation.MIDDLE.friction(brief.friction().teeth()),
                teeth.centreError().si(),
                teeth.thinning().low().si(),
                teeth.thinning().high().si(),
                brief.printer().nozzle().si(),
                new BriefChoices(brief).modules());
    }

    private static FixedShape fixed(ToothShape shape) {
        return new FixedShape(
                shape.pinionShift().map(Quantity::si),
                shape.wheelAddendum().map(Quantity::si),
                shape.pinionAddendum().map(Quantity::si),
                shape.practicalAddendum().map(Quantity::si),
                shape.wheelThickness().map(Quantity::si),
                shape.leafThickness().map(Quantity::si),
                shape.pinDiameter().map(Quantity::si));
    }

    private static ToothFamily family(Brief.ToothForm form) {
        return switch (form) {
            case INVOLUTE -> ToothFamily.INVOLUTE;
            case CYCLOIDAL -> ToothFamily.CYCLOIDAL;
            case LANTERN -> ToothFamily.LANTERN;
        };
    }

    /**
     * The same teeth where they need not print: a mesh has those that a larger module would give it, so what is allowed
     * with the demand has the same figures without it.
     */
    private record Unprinted(MeshLoss printed) implements MeshLoss {
        @Override
        public String label() {
            return printed.label();
        }

        @Override
        public Optional<MeshTeeth> teeth(int toothCount, int leafCount, ToothModule module) {
            return printed.atAnyModule(toothCount, leafCount);
        }

        @Override
        public Optional<MeshTeeth> atAnyModule(int toothCount, int leafCount) {
            return printed.atAnyModule(toothCount, leafCount);
        }
    }
}
