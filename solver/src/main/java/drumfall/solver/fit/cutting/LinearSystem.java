// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fit.cutting;

import java.util.Arrays;

/** Small dense linear systems, by elimination with row exchange. */
final class LinearSystem {
    private LinearSystem() {}

    /**
     * Solves {@code A x = b} and leaves both as they are.
     *
     * @param matrix A, square and regular
     * @param right b
     */
    static double[] solve(double[][] matrix, double[] right) {
        int n = right.length;
        double[][] rows = new double[n][];
        for (int i = 0; i < n; i++) {
            rows[i] = Arrays.copyOf(matrix[i], n + 1);
            rows[i][n] = right[i];
        }
        for (int column = 0; column < n; column++) {
            exchange(rows, column);
            for (int row = column + 1; row < n; row++) {
                subtract(rows[row], rows[column], column);
            }
        }
        return substituted(rows);
    }

    static double[][] transposed(double[][] matrix) {
        double[][] turned = new double[matrix.length][matrix.length];
        for (int i = 0; i < matrix.length; i++) {
            for (int j = 0; j < matrix.length; j++) {
                turned[j][i] = matrix[i][j];
            }
        }
        return turned;
    }

    private static void exchange(double[][] rows, int column) {
        int pivot = column;
        for (int row = column + 1; row < rows.length; row++) {
            if (Math.abs(rows[row][column]) > Math.abs(rows[pivot][column])) {
                pivot = row;
            }
        }
        double[] kept = rows[column];
        rows[column] = rows[pivot];
        rows[pivot] = kept;
    }

    private static void subtract(double[] row, double[] pivot, int column) {
        double factor = row[column] / pivot[column];
        for (int i = column; factor != 0 && i < row.length; i++) {
            row[i] -= factor * pivot[i];
        }
    }

    private static double[] substituted(double[][] rows) {
        int n = rows.length;
        double[] x = new double[n];
        for (int row = n - 1; row >= 0; row--) {
            double rest = rows[row][n];
            for (int i = row + 1; i < n; i++) {
                rest -= rows[row][i] * x[i];
            }
            x[row] = rest / rows[row][row];
        }
        return x;
    }
}
