// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.escape;

import java.util.function.ToDoubleFunction;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketedUnivariateSolver;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.events.Action;
import org.hipparchus.ode.events.AdaptableInterval;
import org.hipparchus.ode.events.ODEEventDetector;
import org.hipparchus.ode.events.ODEEventHandler;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;

/** Integrates a motion until a function of its state passes through zero. */
final class SteppedMotion {
    /** Longest phase of a beat that is waited for, s. */
    private static final double PATIENCE = 10;

    private SteppedMotion() {}

    /** The derivative of a state. */
    interface Law {
        double[] slope(double[] state);
    }

    /** The state in which {@code until} first changes its sign after the start. */
    static ODEStateAndDerivative run(double[] start, double longestCheck, Law law, ToDoubleFunction<double[]> until) {
        DormandPrince853Integrator integrator = new DormandPrince853Integrator(1e-12, 1, 1e-13, 1e-11);
        integrator.addEventDetector(new Stop(longestCheck, until));
        ODEStateAndDerivative end =
                integrator.integrate(new Equation(start.length, law), new ODEState(0, start), PATIENCE);
        if (end.getTime() >= PATIENCE) {
            throw new IllegalStateException("The phase did not end.");
        }
        return end;
    }

    private record Equation(int getDimension, Law law) implements OrdinaryDifferentialEquation {
        @Override
        public double[] computeDerivatives(double time, double[] state) {
            return law.slope(state);
        }
    }

    private record Stop(double longestCheck, ToDoubleFunction<double[]> until) implements ODEEventDetector {
        @Override
        public AdaptableInterval getMaxCheckInterval() {
            return AdaptableInterval.of(longestCheck);
        }

        @Override
        public int getMaxIterationCount() {
            return 200;
        }

        @Override
        public BracketedUnivariateSolver<UnivariateFunction> getSolver() {
            return new BracketingNthOrderBrentSolver(0, 1e-13, 0, 5);
        }

        @Override
        public ODEEventHandler getHandler() {
            return (state, detector, increasing) -> Action.STOP;
        }

        @Override
        public double g(ODEStateAndDerivative state) {
            return until.applyAsDouble(state.getPrimaryState());
        }
    }
}
