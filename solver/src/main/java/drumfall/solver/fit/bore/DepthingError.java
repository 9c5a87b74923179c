// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fit.bore;

import drumfall.solver.fit.FitException;
import drumfall.solver.fit.Nanometres;

/**
 * How far a mesh's real centre distance may be off the nominal one.
 *
 * @param closest real minus nominal at the least, nm, not positive
 * @param widest real minus nominal at the most, nm, not negative
 */
public record DepthingError(double closest, double widest) {
    /**
     * Checks that the nominal distance lies between.
     *
     * @throws FitException if it does not
     */
    public DepthingError {
        if (!(closest <= 0 && widest >= 0)) {
            throw FitException.refused(
                    "error", closest + " to " + widest + " nm", "a mesh", "hold the nominal distance", "swap the ends");
        }
    }

    /**
     * The worst case to both sides: both arbors stray along the line of centres, on top of what the print is off.
     *
     * @param first one arbor at its gear
     * @param second the other
     * @param print greatest error of the printed distance and of eccentric gears, nm, 0 to 5 mm
     */
    public static DepthingError anyWay(SideShake first, SideShake second, long print) {
        double play = first.farthest() + second.farthest();
        return new DepthingError(-play - checked(print), play + print);
    }

    /**
     * The worst case under load: tooth pressure holds both arbors apart, so play only widens.
     *
     * @param first one arbor at its gear
     * @param second the other
     * @param print greatest error of the printed distance and of eccentric gears, nm, 0 to 5 mm
     */
    public static DepthingError pushedApart(SideShake first, SideShake second, long print) {
        return new DepthingError(-(double) checked(print), first.farthest() + second.farthest() + print);
    }

    /**
     * The closest end in modules, as the contact band takes it.
     *
     * @param module nm, positive
     */
    public double closestInModules(long module) {
        return closest / checkedModule(module);
    }

    /**
     * The widest end in modules, as the contact band takes it.
     *
     * @param module nm, positive
     */
    public double widestInModules(long module) {
        return widest / checkedModule(module);
    }

    private static long checked(long print) {
        FitException.requireLength("print error", "a centre distance", print, 0, 5 * Nanometres.MILLIMETRE);
        return print;
    }

    private static double checkedModule(long module) {
        FitException.requireLength("module", "a mesh", module, 1, 100 * Nanometres.MILLIMETRE);
        return module;
    }
}
