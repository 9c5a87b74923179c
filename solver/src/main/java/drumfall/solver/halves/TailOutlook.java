// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.halves;

/**
 * The least that any tail needs behind meshes with a ratio, worked out once for ratios that lie close together.
 *
 * <p>What is told for a ratio bounds the tails of all ratios in its band: it holds for the whole range of speeds that any of
 * them leaves to the tail, and for the fastest of them. May be shared between threads, which may both work one out.
 */
final class TailOutlook {
    /** Narrower than the bands of {@link TailBounds}, so that little is lost. */
    private static final double WIDTH = 0.0005;

    /** Bands kept in mind, up to a ratio of twenty thousand. */
    private static final int BANDS = 20_000;

    private final TailBounds tails;
    private final EscapeSide escape;
    private final TailBounds.Least[] known;

    /**
     * The outlook on some tails.
     *
     * @param tails their bounds
     * @param escape the escape wheel
     */
    TailOutlook(TailBounds tails, EscapeSide escape) {
        this.tails = tails;
        this.escape = escape;
        this.known = new TailBounds.Least[BANDS];
    }

    /**
     * The least that any tail needs.
     *
     * @param ratio of the meshes before it, more than 0
     */
    TailBounds.Least behind(double ratio) {
        int band = (int) Math.floor(Math.log(ratio) / WIDTH);
        if (band < 0 || band >= BANDS) {
            return tails.between(escape.fewestTurns / ratio, escape.mostTurns / ratio, escape, ratio);
        }
        TailBounds.Least least = known[band];
        if (least == null) {
            // A hundredth of a band more on either side takes in the rounding of logarithms.
            double slowest = Math.exp(WIDTH * (band - 0.01));
            double fastest = Math.exp(WIDTH * (band + 1.01));
            least = tails.between(escape.fewestTurns / fastest, escape.mostTurns / slowest, escape, fastest);
            known[band] = least;
        }
        return least;
    }
}
