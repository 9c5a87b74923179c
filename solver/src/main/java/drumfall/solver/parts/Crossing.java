// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.parts;

import drumfall.solver.teeth.outline.GearOutline;
import drumfall.solver.teeth.outline.WheelBody;

/**
 * How wheels are crossed out: straight arms from a hub to a rim, round corners between them.
 *
 * <p>All wheels of a clock have the same hub and the same arms, so that what is cut out of a wheel hangs on the wheel alone.
 * What stands on a wheel and is wider than its hub, a pinion or the click's pivot, has ground down to the bed, as a hub of its
 * own; what that fills of the windows hangs on its radius alone, since straight arms are as wide at one hub as at another.
 *
 * @param arms number of arms, at least 3
 * @param armWidth width of an arm, m, positive
 * @param hubRadius radius of the hub, m, so large that the arms part at it
 * @param rimModules width of a rim below its teeth's roots, modules, positive
 * @param wall the thinnest wall that is printed, m, positive
 * @param corner radius in the windows' corners, m, positive
 * @param leastWindow least height of a window between hub and rim, m; a wheel with less stays solid
 */
public record Crossing(
        int arms,
        double armWidth,
        double hubRadius,
        double rimModules,
        double wall,
        double corner,
        double leastWindow) {
    /** Four arms, as in most English clocks; common practice, no source. */
    private static final int ARMS = 4;

    /** Width of an arm in walls; common practice, no source. */
    private static final double ARM_WALLS = 6;

    /** Width of a rim in modules, a little more than a tooth is deep; common practice, no source. */
    private static final double RIM_MODULES = 2.5;

    /** Width of the escape wheel's rim in walls: next to nothing pulls at it; common practice, no source. */
    private static final double ESCAPE_RIM_WALLS = 3;

    private static final double MILLIMETRES = 1e3;
    private static final double CORNER = 0.002;
    private static final double LEAST_WINDOW = 0.006;
    private static final double LOWEST = 0.002;

    /** Corner of a low window over its height, short of a half, at which nothing straight would be left. */
    private static final double LOW_CORNER = 0.45;

    /**
     * Crossings for printed clocks that hang on a wall; common practice, no source.
     *
     * @param wall the thinnest wall that is printed, m
     * @param rod diameter of the thickest rod, or of the widest bearing in a hub, m
     * @param hubWall material around it, m; a hub has at least the thinnest wall
     */
    public static Crossing of(double wall, double rod, double hubWall) {
        double arm = ARM_WALLS * wall;
        double hub = Math.max(rod / 2 + Math.max(hubWall, wall), parting(ARMS, arm, CORNER, wall));
        return new Crossing(ARMS, arm, hub, RIM_MODULES, wall, CORNER, LEAST_WINDOW);
    }

    /** Radius of the smallest hub at which arms with round corners part, the corners' middles a wall asunder, m. */
    private static double parting(int arms, double width, double corner, double wall) {
        return (width / 2 + corner + wall / 2) / Math.sin(Math.PI / arms) - corner;
    }

    /**
     * Width of the rim of a toothed wheel, m.
     *
     * @param module m
     */
    public double rim(double module) {
        return Math.max(wall, rimModules * module);
    }

    /** Width of the escape wheel's rim, m. */
    public double escapeRim() {
        return ESCAPE_RIM_WALLS * wall;
    }

    /**
     * Whether a wheel is crossed out.
     *
     * @param root radius to its teeth's roots, m
     * @param rim width of its rim, m
     */
    public boolean crossed(double root, double rim) {
        return root - rim - hubRadius >= leastWindow;
    }

    /**
     * Radius in the windows' corners beside what stands on a wheel that is crossed out, m; 0 if it closes the windows. Low
     * windows are nearly round at their ends; below a height of 2 mm (common practice, no source) they are left out.
     *
     * @param room from what stands on the wheel to its rim, m
     */
    public double cornerWithin(double room) {
        return room >= LOWEST ? Math.min(corner, LOW_CORNER * room) : 0;
    }

    /**
     * Area of a wheel's windows with its own hub, square metres; 0 if it is not crossed out.
     *
     * @param root radius to its teeth's roots, m
     * @param rim width of its rim, m
     */
    public double opened(double root, double rim) {
        return crossed(root, rim) ? insideRim(root - rim) - aroundHub(hubRadius) : 0;
    }

    /**
     * Area that what stands on a wheel fills of its windows, square metres; 0 if it stands on the hub. Where the
     * wheel is solid, or is filled to its rim, this says too much.
     *
     * @param radius that it reaches to, m
     */
    public double filled(double radius) {
        return radius > hubRadius ? aroundHub(radius) - aroundHub(hubRadius) : 0;
    }

    /**
     * Second moment about the axis of the windows that what stands on a wheel leaves, m⁴; 0 if it is not crossed out, or they are
     * closed.
     *
     * @param root radius to its teeth's roots, m
     * @param rim width of its rim, m
     * @param foot radius of what stands on it, m
     */
    public double windowsPolar(double root, double rim, double foot) {
        double hub = Math.max(hubRadius, foot);
        double round = cornerWithin(root - rim - hub);
        if (!crossed(root, rim) || round <= 0) {
            return 0;
        }
        double around = MILLIMETRES * hub / 2;
        WheelBody body = new WheelBody(
                around, around, 4 * around, MILLIMETRES * rim, arms, MILLIMETRES * armWidth, MILLIMETRES * round);
        double windows = GearOutline.inside(body, MILLIMETRES * root).stream()
                .skip(1)
                .mapToDouble(window -> Math.abs(window.moments().polar()))
                .sum();
        return windows / PartInertia.fourth(MILLIMETRES);
    }

    /** Area between the arms within a circle, the corners at that circle left standing, square metres. */
    private double insideRim(double radius) {
        return between(radius) - 2 * arms * cornerAtRim(radius);
    }

    /** Area between the arms within a circle and in the corners just outside it, square metres. */
    private double aroundHub(double radius) {
        return between(radius) + 2 * arms * cornerAtHub(radius);
    }

    /** A circle less the strips of its arms; what these share about the centre is the same for every circle. */
    private double between(double radius) {
        double half = armWidth / 2;
        double strip = half * along(radius, half) + radius * radius * Math.asin(half / radius);
        return Math.PI * radius * radius - arms * strip;
    }

    /** Between an arm, the rim and the arc that touches both from within the window; Green's theorem along the three. */
    private double cornerAtRim(double radius) {
        double half = armWidth / 2;
        double off = half + corner;
        double centre = along(radius - corner, off);
        double touch = Math.asin(off / (radius - corner));
        double line = -half * (along(radius, half) - centre);
        double onRim = radius * radius * (touch - Math.asin(half / radius));
        double back = corner * corner * (-Math.PI / 2 - touch)
                + centre * (half - radius * Math.sin(touch))
                - off * (centre - radius * Math.cos(touch));
        return (line + onRim + back) / 2;
    }

    /** Between an arm, the hub and the arc that touches both from within the window; Green's theorem along the three. */
    private double cornerAtHub(double radius) {
        double half = armWidth / 2;
        double off = half + corner;
        double centre = along(radius + corner, off);
        double touch = Math.asin(off / (radius + corner));
        double line = -half * (centre - along(radius, half));
        double back = corner * corner * (touch - Math.PI / 2)
                + centre * (radius * Math.sin(touch) - half)
                - off * (radius * Math.cos(touch) - centre);
        double onHub = radius * radius * (Math.asin(half / radius) - touch);
        return (line + back + onHub) / 2;
    }

    private static double along(double radius, double off) {
        return Math.sqrt(radius * radius - off * off);
    }
}
