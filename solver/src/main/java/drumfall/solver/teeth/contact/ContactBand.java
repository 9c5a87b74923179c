// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.contact;

import drumfall.solver.teeth.form.MeshPair;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A mesh over the band of its errors: the nominal case and the corners of the band.
 *
 * <p>Print error, bore play that load pushes open and an eccentric gear all show as a centre distance that is off, the
 * last once a turn; their worst case is an end of the band. Thinning only changes the backlash.
 *
 * @param nominal as drawn
 * @param corners the ends of the band, centre distance and thinning each at both ends
 */
public record ContactBand(MeshContact nominal, List<MeshContact> corners) {
    /** Copies the corners. */
    public ContactBand {
        corners = List.copyOf(corners);
    }

    /**
     * The errors a mesh may have, modules.
     *
     * @param closest real minus nominal centre distance at its least
     * @param widest real minus nominal centre distance at its greatest
     * @param leastThinning least thinning of each gear's teeth along the pitch circle
     * @param mostThinning greatest thinning of each gear's teeth
     */
    public record Errors(double closest, double widest, double leastThinning, double mostThinning) {
        /**
         * Checks the order of the ends.
         *
         * @throws IllegalArgumentException if an end is on the wrong side
         */
        public Errors {
            if (!(closest <= 0 && widest >= 0 && leastThinning <= mostThinning)) {
                throw new IllegalArgumentException("The errors (" + closest + " to " + widest + ", " + leastThinning
                        + " to " + mostThinning + ") of a mesh must hold the nominal centre distance and be in order, "
                        + "in modules. Maybe swap the ends.");
            }
        }
    }

    /**
     * Looks at all corners.
     *
     * @param pair the gears, the first driving
     * @param errors the band
     * @param friction coefficient of friction
     * @param sampling how finely to look
     * @param cache where paths are kept
     */
    public static ContactBand of(MeshPair pair, Errors errors, double friction, Sampling sampling, PathCache cache) {
        double usual = (errors.leastThinning + errors.mostThinning) / 2;
        MeshContact nominal = at(pair, 0, usual, sampling, cache).withFriction(friction);
        List<MeshContact> corners = new ArrayList<>();
        for (double error : new double[] {errors.closest, errors.widest}) {
            for (double thinning : new double[] {errors.leastThinning, errors.mostThinning}) {
                corners.add(at(pair, error, thinning, sampling, cache).withFriction(friction));
            }
        }
        return new ContactBand(nominal, corners);
    }

    private static ContactPath at(MeshPair pair, double error, double thinning, Sampling sampling, PathCache cache) {
        return cache.path(pair, new MeshConditions(error, thinning, thinning), sampling);
    }

    /** The corner, or the nominal case, with the least efficiency at its worst phase. */
    public MeshContact worst() {
        return all().stream()
                .min(Comparator.comparingDouble(MeshContact::worst))
                .orElseThrow();
    }

    /** The least backlash in the band along the follower's pitch circle, modules. */
    public double leastBacklash() {
        return all().stream()
                .mapToDouble(c -> c.path().clearances().leastBacklash())
                .min()
                .orElseThrow();
    }

    /** The least binding friction in the band. */
    public double bindingFriction() {
        return all().stream().mapToDouble(c -> c.path().bindingFriction()).min().orElseThrow();
    }

    /** The nominal case and all corners. */
    public List<MeshContact> all() {
        List<MeshContact> all = new ArrayList<>(corners);
        all.add(0, nominal);
        return all;
    }
}
