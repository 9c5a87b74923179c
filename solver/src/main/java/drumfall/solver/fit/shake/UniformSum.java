// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fit.shake;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The exact distribution of a sum of independent uniform errors: a piecewise polynomial.
 *
 * <p>For n uniform errors of widths w and their sum's distance t from its least value,
 * {@code F = 1 / (n! Π w) · Σ over subsets S of (−1)^|S| max(0, t − Σ_S w)^n} (Feller, <i>An Introduction to Probability
 * Theory and Its Applications</i>, vol. II, ch. I.9, for equal widths; the same argument gives unequal ones). The terms nearly
 * cancel, so they are summed in exact decimals and rounded once; equal widths are taken together with binomial coefficients.
 * A triangular error is the sum of two uniform ones of half its width.
 */
public final class UniformSum implements ShakeDistribution {
    /** The most terms that are summed; each is one power of an exact decimal. */
    static final int MOST_TERMS = 20_000;

    private static final int MOST_ERRORS = 40;
    private static final BigDecimal HALF = new BigDecimal("0.5");

    private final List<Map.Entry<BigDecimal, Integer>> groups;
    private final int errors;
    private final BigDecimal width;
    private final BigDecimal divisor;

    private UniformSum(SortedMap<BigDecimal, Integer> widths) {
        groups = List.copyOf(widths.entrySet());
        errors = widths.values().stream().mapToInt(Integer::intValue).sum();
        BigDecimal sum = BigDecimal.ZERO;
        BigDecimal product = BigDecimal.ONE;
        for (Map.Entry<BigDecimal, Integer> group : groups) {
            sum = sum.add(group.getKey().multiply(BigDecimal.valueOf(group.getValue())));
            product = product.multiply(group.getKey().pow(group.getValue()));
        }
        width = sum;
        divisor = product.multiply(new BigDecimal(factorial(errors)));
    }

    /**
     * The exact distribution of a stack's errors; empty if an error is normal or there are too many terms.
     *
     * @param stack the stack
     */
    public static Optional<UniformSum> of(ArborStack stack) {
        SortedMap<BigDecimal, Integer> widths = new TreeMap<>();
        for (Contribution part : stack.contributions()) {
            BigDecimal whole = BigDecimal.valueOf(part.minus() + part.plus());
            if (whole.signum() == 0) {
                continue;
            }
            switch (part.shape()) {
                case UNIFORM -> widths.merge(whole, part.count(), Integer::sum);
                case TRIANGULAR ->
                    widths.merge(whole.multiply(HALF).stripTrailingZeros(), 2 * part.count(), Integer::sum);
                case TRUNCATED_NORMAL -> {
                    return Optional.empty();
                }
            }
        }
        return tractable(widths) ? Optional.of(new UniformSum(widths)) : Optional.empty();
    }

    private static boolean tractable(SortedMap<BigDecimal, Integer> widths) {
        long terms = 1;
        int errors = 0;
        for (int count : widths.values()) {
            errors += count;
            terms = Math.min(MOST_TERMS + 1L, terms * (count + 1));
        }
        return terms <= MOST_TERMS && errors <= MOST_ERRORS;
    }

    @Override
    public double chanceBelow(double deviation) {
        BigDecimal distance = new BigDecimal(deviation).add(width.multiply(HALF));
        if (distance.signum() <= 0) {
            return 0;
        }
        if (distance.compareTo(width) >= 0) {
            return 1;
        }
        return terms(0, distance, BigInteger.ONE)
                .divide(divisor, MathContext.DECIMAL64)
                .doubleValue();
    }

    @Override
    public double chanceAbove(double deviation) {
        return chanceBelow(-deviation);
    }

    @Override
    public Chance missing(double mean, ShakeBand band) {
        return new Chance(chanceBelow(band.least() - mean), chanceAbove(band.most() - mean), 0, true);
    }

    private BigDecimal terms(int group, BigDecimal distance, BigInteger factor) {
        if (distance.signum() <= 0) {
            return BigDecimal.ZERO;
        }
        if (group == groups.size()) {
            return distance.pow(errors).multiply(new BigDecimal(factor));
        }
        BigDecimal step = groups.get(group).getKey();
        int count = groups.get(group).getValue();
        BigDecimal sum = BigDecimal.ZERO;
        BigDecimal rest = distance;
        BigInteger binomial = factor;
        for (int taken = 0; taken <= count; taken++) {
            sum = sum.add(terms(group + 1, rest, binomial));
            rest = rest.subtract(step);
            binomial =
                    binomial.multiply(BigInteger.valueOf(taken - (long) count)).divide(BigInteger.valueOf(taken + 1L));
        }
        return sum;
    }

    private static BigInteger factorial(int n) {
        BigInteger product = BigInteger.ONE;
        for (int factor = 2; factor <= n; factor++) {
            product = product.multiply(BigInteger.valueOf(factor));
        }
        return product;
    }
}
