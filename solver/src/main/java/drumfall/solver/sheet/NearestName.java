// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.sheet;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Finds the known name that a misspelt one was probably meant to be. */
final class NearestName {
    /** One slip in four letters is a likely misspelling; more is another word. */
    private static final int LETTERS_PER_SLIP = 4;

    private NearestName() {}

    static Optional<String> of(String written, Collection<String> known) {
        return known.stream()
                .filter(name -> Math.abs(name.length() - written.length()) <= slipsAllowed(name))
                .filter(name -> slips(written, name) <= slipsAllowed(name))
                .min(Comparator.comparingInt(name -> slips(written, name)));
    }

    private static int slipsAllowed(String name) {
        return 1 + name.length() / LETTERS_PER_SLIP;
    }

    /** Letters put in, left out, changed or swapped with their neighbour (optimal string alignment), in any case. */
    private static int slips(String written, String name) {
        String a = written.toLowerCase(Locale.ROOT);
        String b = name.toLowerCase(Locale.ROOT);
        int[][] cost = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                cost[i][j] = i == 0 || j == 0 ? i + j : cheapest(cost, a, b, i, j);
            }
        }
        return cost[a.length()][b.length()];
    }

    private static int cheapest(int[][] cost, String a, String b, int i, int j) {
        int changed = cost[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        int cheapest = Math.min(changed, 1 + Math.min(cost[i - 1][j], cost[i][j - 1]));
        boolean swapped = i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
        return swapped ? Math.min(cheapest, 1 + cost[i - 2][j - 2]) : cheapest;
    }
}
