// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.contact;

import drumfall.solver.teeth.flank.Flank;
import drumfall.solver.teeth.flank.FlankPiece;
import drumfall.solver.teeth.flank.FlankPoint;

/** Points of the driver's flank, computed once per mesh, at which a contact is first looked for. */
final class DriverNodes {
    private final FlankPiece[] pieces;
    private final int[] piece;
    private final double[] share;
    private final double[] x;
    private final double[] y;
    private final double[] normalX;
    private final double[] normalY;

    DriverNodes(Flank flank, int perPiece) {
        pieces = flank.pieces().toArray(FlankPiece[]::new);
        int count = pieces.length * perPiece;
        piece = new int[count];
        share = new double[count];
        x = new double[count];
        y = new double[count];
        normalX = new double[count];
        normalY = new double[count];
        for (int i = 0; i < count; i++) {
            piece[i] = i / perPiece;
            share[i] = (i % perPiece) / (perPiece - 1.0);
            place(i, pieces[piece[i]].at(share[i]));
        }
    }

    private void place(int i, FlankPoint point) {
        double c = Math.cos(point.halfAngle());
        double s = Math.sin(point.halfAngle());
        double radial = point.radialNormal();
        double forward = point.forwardNormal();
        x[i] = point.radius() * c;
        y[i] = point.radius() * s;
        normalX[i] = radial * c - forward * s;
        normalY[i] = radial * s + forward * c;
    }

    int count() {
        return x.length;
    }

    int piece(int i) {
        return piece[i];
    }

    double share(int i) {
        return share[i];
    }

    FlankPoint point(int piece, double share) {
        return pieces[piece].at(share);
    }

    double x(int i, double cosine, double sine) {
        return x[i] * cosine - y[i] * sine;
    }

    double y(int i, double cosine, double sine) {
        return x[i] * sine + y[i] * cosine;
    }

    double normalX(int i, double cosine, double sine) {
        return normalX[i] * cosine - normalY[i] * sine;
    }

    double normalY(int i, double cosine, double sine) {
        return normalX[i] * sine + normalY[i] * cosine;
    }
}
