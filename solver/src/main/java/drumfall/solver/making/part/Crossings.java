// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making.part;

import static drumfall.solver.making.part.Lengths.mm;

import drumfall.solver.making.solid.SizeLimitException;
import drumfall.solver.teeth.outline.WheelBody;

/**
 * What is cut out of a wheel between hub, arms and rim.
 *
 * @param hub diameter of the hub, m; unused without arms
 * @param rim width of the rim below the roots, m; unused without arms
 * @param arms number of arms, 0 for a solid disc, otherwise from 3 to 12
 * @param armWidth width of an arm, m; unused without arms
 * @param corner radius in the windows' corners, m; unused without arms
 */
public record Crossings(double hub, double rim, int arms, double armWidth, double corner) {
    /** A solid disc. */
    public static final Crossings NONE = new Crossings(0, 0, 0, 0, 0);

    private static final int MOST_ARMS = 12;

    /**
     * Checks the number of arms.
     *
     * @throws SizeLimitException if it is out of its range
     */
    public Crossings {
        if (arms != 0) {
            SizeLimitException.count("number of arms of a wheel", arms, WheelBody.FEWEST_ARMS, MOST_ARMS);
        }
    }

    /** Refuses crossings that leave too little material or no window. */
    void require(String part, double root, double bore, PrintSizes print) {
        if (arms == 0) {
            return;
        }
        print.requireWall("rim of " + part, rim);
        print.requireWall("arm width of " + part, armWidth);
        SizeLimitException.atLeast(
                "corner radius of " + part, corner, print.extrusion() / 2, "half an extrusion width");
        SizeLimitException.atLeast(
                "hub of " + part, hub, bore + 2 * print.wall(), "two extrusion widths around the bore");
        double room = root - hub / 2 - 2 * corner;
        SizeLimitException.atMost("rim of " + part, rim, room, "so that a window is left between hub and rim");
        double most = 2 * ((hub / 2 + corner) * Math.sin(Math.PI / arms) - corner);
        SizeLimitException.atMost("arm width of " + part, armWidth, most, "so that " + arms + " arms part at the hub");
    }

    /** Radius up to which the wheel is solid, m. */
    double solidRadius(double root) {
        return arms == 0 ? root : hub / 2;
    }

    /** The body in millimetres. */
    WheelBody body(double bore, PrintSizes print) {
        return arms == 0
                ? WheelBody.solid(mm(bore), mm(print.wall()))
                : new WheelBody(mm(bore), mm(print.wall()), mm(hub), mm(rim), arms, mm(armWidth), mm(corner));
    }
}
