// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.pendulum;

/** Inverts symmetric positive definite matrices of three rows. */
final class SymmetricThree {
    private SymmetricThree() {}

    /** The inverse by cofactors: for three rows as exact as elimination and without pivots. */
    static double[][] inverse(double[][] m) {
        double a = m[1][1] * m[2][2] - m[1][2] * m[1][2];
        double b = m[0][2] * m[1][2] - m[0][1] * m[2][2];
        double c = m[0][1] * m[1][2] - m[0][2] * m[1][1];
        double d = m[0][0] * m[2][2] - m[0][2] * m[0][2];
        double e = m[0][1] * m[0][2] - m[0][0] * m[1][2];
        double f = m[0][0] * m[1][1] - m[0][1] * m[0][1];
        double determinant = m[0][0] * a + m[0][1] * b + m[0][2] * c;
        double[][] inverse = {{a, b, c}, {b, d, e}, {c, e, f}};
        for (double[] row : inverse) {
            for (int i = 0; i < 3; i++) {
                row[i] /= determinant;
            }
        }
        return inverse;
    }
}
