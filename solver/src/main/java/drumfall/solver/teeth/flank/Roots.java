// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.flank;

import java.util.function.DoubleUnaryOperator;

/** Roots of one unknown inside a bracket. */
public final class Roots {
    private static final int STEPS = 200;

    private Roots() {}

    /**
     * The place in a bracket where a function changes sign.
     *
     * <p>Chandrupatla's method: inverse quadratic interpolation where it is safe, bisection elsewhere (T. R.
     * Chandrupatla, <i>Advances in Engineering Software</i> 28 (1997) 145-149). A jump through zero counts as a root.
     *
     * @param f the function; its values at the ends must not have the same sign
     * @param low one end
     * @param high the other end
     * @param tolerance width of the final bracket, &gt; 0
     * @throws IllegalArgumentException if both ends have the same sign
     */
    public static double find(DoubleUnaryOperator f, double low, double high, double tolerance) {
        double atLow = f.applyAsDouble(low);
        double atHigh = f.applyAsDouble(high);
        if (atLow == 0) {
            return low;
        }
        if (atLow * atHigh > 0 || Double.isNaN(atLow) || Double.isNaN(atHigh)) {
            throw new IllegalArgumentException("The bracket (" + low + " to " + high
                    + ") must hold a change of sign. Maybe widen it. Values " + atLow + ", " + atHigh);
        }
        return search(f, low, high, atLow, atHigh, tolerance);
    }

    /**
     * The place in a bracket where a function falls through zero; the nearer end where rounding hides the change.
     *
     * @param f the function
     * @param low lower end, where the function should be positive
     * @param high upper end, where it should not
     * @param tolerance width of the final bracket, &gt; 0
     */
    public static double falling(DoubleUnaryOperator f, double low, double high, double tolerance) {
        double atLow = f.applyAsDouble(low);
        if (!(atLow > 0)) {
            return low;
        }
        double atHigh = f.applyAsDouble(high);
        return atHigh < 0 ? search(f, low, high, atLow, atHigh, tolerance) : high;
    }

    private static double search(
            DoubleUnaryOperator f, double low, double high, double atLow, double atHigh, double tolerance) {
        double a = low;
        double b = high;
        double fa = atLow;
        double fb = atHigh;
        double t = 0.5;
        for (int i = 0; i < STEPS && fb != 0; i++) {
            double x = a + t * (b - a);
            double fx = f.applyAsDouble(x);
            double c;
            double fc;
            if (Math.signum(fx) == Math.signum(fa)) {
                c = a;
                fc = fa;
            } else {
                c = b;
                fc = fb;
                b = a;
                fb = fa;
            }
            a = x;
            fa = fx;
            double width = Math.abs(b - a);
            double least = 0.5 * tolerance / width;
            if (least > 0.5 || fa == 0) {
                break;
            }
            t = Math.min(Math.max(step(a, b, c, fa, fb, fc), least), 1 - least);
        }
        return Math.abs(fa) < Math.abs(fb) ? a : b;
    }

    private static double step(double a, double b, double c, double fa, double fb, double fc) {
        double xi = (a - b) / (c - b);
        double phi = (fa - fb) / (fc - fb);
        double rest = 1 - phi;
        if (phi * phi < xi && rest * rest < 1 - xi) {
            return fa / (fb - fa) * fc / (fb - fc) + (c - a) / (b - a) * fa / (fc - fa) * fb / (fc - fb);
        }
        return 0.5;
    }
}
