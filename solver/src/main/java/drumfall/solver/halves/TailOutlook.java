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

    private final TailBounds tails;
    private final long modules;
    private final EscapeSide escape;
    private final int firstBand;
    private final TailBounds.Least[] known;

    /**
     * The outlook on some tails.
     *
     * @param tails their bounds
     * @param escape the escape wheel
     * @param lowest smallest ratio of the meshes before them, more than 0
     * @param highest largest ratio of the meshes before them
     * @param modules one bit for each module that every tail uses
     */
    TailOutlook(TailBounds tails, EscapeSide escape, double lowest, double highest, long modules) {
        this.tails = tails;
        this.modules = modules;
        this.escape = escape;
        this.firstBand = band(lowest) - 1;
        this.known = new TailBounds.Least[band(highest) + 2 - firstBand];
    }

    /** The band of a ratio, the same for all outlooks. */
    static int band(double ratio) {
        return (int) Math.floor(Math.log(ratio) / WIDTH);
    }

    /**
     * The least that any tail needs.
     *
     * @param band of the ratio of the meshes before it, which lies in the range stated
     */
    TailBounds.Least behind(int band) {
        TailBounds.Least least = known[band - firstBand];
        if (least == null) {
            // A hundredth of a band more on either side takes in the rounding of logarithms.
            double slowest = Math.exp(WIDTH * (band - 0.01));
            double fastest = Math.exp(WIDTH * (band + 1.01));
            least = tails.between(escape.fewestTurns / fastest, escape.mostTurns / slowest, escape, fastest, modules);
            known[band - firstBand] = least;
        }
        return least;
    }
}
