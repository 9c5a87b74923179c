// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.samples;

import drumfall.solver.brief.Brief;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.teeth.InvoluteClosedForm;
import java.util.Set;

/** Raters with teeth simple enough for sizes and weights to be worked by hand: full depth, 20 degrees, closed form. */
public final class HandTeeth {
    private HandTeeth() {}

    /** A rater with such teeth. */
    public static TrainRater rater(Brief brief) {
        return new TrainRater(brief, Set.of(), new InvoluteClosedForm(Math.toRadians(20)));
    }
}
