// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth;

import drumfall.solver.teeth.form.BasicRack;
import drumfall.solver.teeth.form.InvolutePair;
import drumfall.solver.teeth.form.MeshPair;
import drumfall.solver.teeth.form.ToothForm;
import drumfall.solver.teeth.outline.ToothArea;
import drumfall.solver.train.ToothModule;
import java.util.Optional;
import java.util.function.DoubleFunction;

/**
 * The same curve for every pair, and full-depth teeth whose mesh force stands at the pitch circle.
 *
 * @param curve what every mesh passes
 */
public record FixedTeeth(EfficiencyCurve curve) implements MeshLoss {
    /** Teeth with a tip one module above the pitch circle, arms as given and the form factor 0.4. */
    static MeshTeeth of(int toothCount, int leafCount, double armShare, DoubleFunction<EfficiencyCurve> curves) {
        MeshPair pair = InvolutePair.of(BasicRack.atAngle(20), toothCount, leafCount, 0, 0)
                .mesh();
        return new MeshTeeth(
                pair,
                figures(pair.driver(), armShare),
                figures(pair.follower(), armShare),
                new MeshTeeth.PathFigures(1, 0.5, Double.POSITIVE_INFINITY),
                new MeshTorque() {
                    @Override
                    public EfficiencyCurve curve(double friction) {
                        return curves.apply(friction);
                    }

                    @Override
                    public double worstOverBand(double friction) {
                        return curves.apply(friction).worst();
                    }
                });
    }

    private static GearFigures figures(ToothForm form, double armShare) {
        double pitch = form.pitchRadius();
        return new GearFigures(pitch + 1, pitch * armShare, 0.4, form.flank().rootRadius(), ToothArea.disc(form));
    }

    @Override
    public String label() {
        return "one curve";
    }

    @Override
    public Optional<MeshTeeth> teeth(int toothCount, int leafCount, ToothModule module) {
        return atAnyModule(toothCount, leafCount);
    }

    @Override
    public Optional<MeshTeeth> atAnyModule(int toothCount, int leafCount) {
        return Optional.of(of(toothCount, leafCount, 1, friction -> curve));
    }
}
