// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.solver.train.Train;
import java.util.List;

/**
 * How a tried train stands to brief and front.
 *
 * @param shortly one sentence with the first of the reasons, for a narrow place
 * @param sentence one sentence, the reasons left to the lists
 * @param missed demands that it misses, each leading to its place in the brief
 * @param better trains of the front that say why it is not on it
 */
public record TrialStanding(String shortly, String sentence, List<BriefLink> missed, List<Better> better) {
    /**
     * A train of the front that beats the tried one, stands for it, or is it.
     *
     * @param train the train
     * @param words what is better in it; empty if nothing is
     */
    public record Better(Train train, String words) {}

    /** Copies the lists. */
    public TrialStanding {
        missed = List.copyOf(missed);
        better = List.copyOf(better);
    }

    static TrialStanding plain(String sentence) {
        return new TrialStanding(sentence, sentence, List.of(), List.of());
    }
}
