// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.ratio;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Products of a number of counts from one range, and the choices of counts behind a product. */
final class CountProducts {
    private final CountRange range;
    private final int factors;

    CountProducts(CountRange range, int factors) {
        this.range = range;
        this.factors = factors;
    }

    /** Every value the product can take, each once, rising. */
    long[] distinct() {
        long[] products = new long[Math.toIntExact(range.choices(factors).longValueExact())];
        int filled = fill(products, 0, 1, factors, range.least());
        if (filled != products.length) {
            throw new IllegalStateException(
                    "The choices filled (%d) must be the choices counted (%d).".formatted(filled, products.length));
        }
        return distinct(products);
    }

    /** Writes the product of every rising choice of the open counts, so each choice once whatever its order. */
    private int fill(long[] products, int from, long product, int open, int least) {
        if (open == 0) {
            products[from] = product;
            return from + 1;
        }
        int next = from;
        for (int count = least; count <= range.most(); count++) {
            next = fill(products, next, Math.multiplyExact(product, count), open - 1, count);
        }
        return next;
    }

    private static long[] distinct(long[] products) {
        Arrays.sort(products);
        int kept = 0;
        for (long product : products) {
            if (kept == 0 || products[kept - 1] != product) {
                products[kept++] = product;
            }
        }
        return Arrays.copyOf(products, kept);
    }

    /** Every choice of counts with the given product, each rising, in lexicographic order. */
    List<List<Integer>> choicesFor(long product) {
        List<List<Integer>> choices = new ArrayList<>();
        collect(product, factors, range.least(), new ArrayList<>(), choices);
        return choices;
    }

    private void collect(long rest, int open, int least, List<Integer> chosen, List<List<Integer>> choices) {
        if (open == 1) {
            if (rest >= least && range.contains(rest)) {
                chosen.add((int) rest);
                choices.add(List.copyOf(chosen));
                chosen.remove(chosen.size() - 1);
            }
            return;
        }
        for (int count = least; count <= range.most() && power(count, open) <= rest; count++) {
            if (rest % count == 0) {
                chosen.add(count);
                collect(rest / count, open - 1, count, chosen, choices);
                chosen.remove(chosen.size() - 1);
            }
        }
    }

    /** Cannot overflow: no count passes the most of the range, whose power the query has checked. */
    private static long power(int count, int exponent) {
        long power = 1;
        for (int factor = 0; factor < exponent; factor++) {
            power = Math.multiplyExact(power, count);
        }
        return power;
    }
}
