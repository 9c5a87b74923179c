// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.ratio;

import static java.math.BigInteger.ONE;
import static java.math.BigInteger.ZERO;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Best rational approximations by mediants.
 *
 * <p>Between two neighbouring fractions a/b and c/d the fraction of smallest denominator is their mediant (a+c)/(b+d);
 * A. Brocot searched tooth counts so in 1861 (B. Hayes, "On the Teeth of Wheels", American Scientist, July 2000). Every
 * fraction nearer to the target than all of smaller denominator is met on the way (G. H. Hardy and E. M. Wright, An
 * Introduction to the Theory of Numbers, chapters III and X, from memory).
 */
public final class SternBrocot {
    /** The longest path listed has as many mediants as the denominator bound. */
    public static final int LARGEST_PATH_BOUND = 100_000;

    private static final Comparator<Approximation> BEST_FIRST = Comparator.comparing(Approximation::distance)
            .thenComparing(approximation -> approximation.ratio().getDenominator())
            .thenComparing(Approximation::ratio);

    private SternBrocot() {}

    /**
     * The mediants met on the way to the target, from the two whole numbers around it, as Brocot walked.
     *
     * @param target positive, at most 512 bits above and below the line
     * @param denominatorBound 1 to {@value #LARGEST_PATH_BOUND}; the walk ends at the target or where the next mediant
     *     would pass this bound
     * @return the mediants in the order met; none for a whole target
     * @throws RatioException if an argument is out of range
     */
    public static List<Approximation> path(BigFraction target, int denominatorBound) {
        requireBound(denominatorBound, LARGEST_PATH_BOUND);
        BigFraction aim = Targets.admitted(target);
        BigFraction lower = BigFraction.of(floor(aim));
        BigFraction upper = lower.add(1);
        List<Approximation> met = new ArrayList<>();
        BigInteger bound = BigInteger.valueOf(denominatorBound);
        boolean reached = lower.equals(aim);
        while (!reached) {
            BigFraction mediant = mediant(lower, upper);
            if (mediant.getDenominator().compareTo(bound) > 0) {
                break;
            }
            met.add(Approximation.of(mediant, aim));
            int side = mediant.compareTo(aim);
            reached = side == 0;
            lower = side < 0 ? mediant : lower;
            upper = side > 0 ? mediant : upper;
        }
        return List.copyOf(met);
    }

    /**
     * The fractions nearer to the target than every fraction of smaller denominator, in order of denominator.
     *
     * <p>The first is the nearest whole number, 0 included; of two equally near the smaller.
     *
     * @param target positive, at most 512 bits above and below the line
     * @param denominatorBound 1 to {@value #LARGEST_PATH_BOUND}
     * @throws RatioException if an argument is out of range
     */
    public static List<Approximation> bestUpTo(BigFraction target, int denominatorBound) {
        List<Approximation> met = path(target, denominatorBound);
        List<Approximation> records = new ArrayList<>();
        records.add(nearest(target, 1));
        for (Approximation candidate : met) {
            if (candidate.isNearerThan(records.get(records.size() - 1))) {
                records.add(candidate);
            }
        }
        return List.copyOf(records);
    }

    /**
     * The nearest fraction within a bound on the denominator; of two equally near the one of smaller denominator, and of
     * two whole numbers the smaller.
     *
     * <p>Runs of mediants to one side are taken in one step, as partial quotients of the continued fraction, so bounds up
     * to the largest long are quick. The two fractions compared at the end are neighbours whose mediant would pass the
     * bound, so none within the bound lies between them.
     *
     * @param target positive, at most 512 bits above and below the line
     * @param denominatorBound at least 1
     * @throws RatioException if an argument is out of range
     */
    public static Approximation nearest(BigFraction target, long denominatorBound) {
        requireBound(denominatorBound, Long.MAX_VALUE);
        BigFraction aim = Targets.admitted(target);
        BigInteger bound = BigInteger.valueOf(denominatorBound);
        if (aim.getDenominator().compareTo(bound) <= 0) {
            return Approximation.of(aim, aim);
        }
        return neighbours(aim, bound).stream()
                .map(neighbour -> Approximation.of(neighbour, aim))
                .min(BEST_FIRST)
                .orElseThrow();
    }

    /**
     * The nearest fraction to a double's exact binary value within a bound on the denominator.
     *
     * @param target positive and finite
     * @param denominatorBound at least 1
     * @throws RatioException if an argument is out of range
     */
    public static Approximation nearest(double target, long denominatorBound) {
        return nearest(Targets.admitted(target), denominatorBound);
    }

    /** The two fractions within the bound that stand closest around a target of larger denominator. */
    private static List<BigFraction> neighbours(BigFraction aim, BigInteger bound) {
        BigInteger dividend = aim.getNumerator();
        BigInteger divisor = aim.getDenominator();
        BigInteger[] before = {ZERO, ONE};
        BigInteger[] convergent = {ONE, ZERO};
        while (true) {
            BigInteger[] division = dividend.divideAndRemainder(divisor);
            BigInteger[] next = stepped(before, convergent, division[0]);
            if (next[1].compareTo(bound) > 0) {
                break;
            }
            before = convergent;
            convergent = next;
            dividend = divisor;
            divisor = division[1];
        }
        BigInteger steps = bound.subtract(before[1]).divide(convergent[1]);
        BigInteger[] other = stepped(before, convergent, steps);
        return List.of(BigFraction.of(convergent[0], convergent[1]), BigFraction.of(other[0], other[1]));
    }

    private static BigInteger[] stepped(BigInteger[] from, BigInteger[] by, BigInteger times) {
        return new BigInteger[] {from[0].add(by[0].multiply(times)), from[1].add(by[1].multiply(times))};
    }

    private static BigFraction mediant(BigFraction lower, BigFraction upper) {
        return BigFraction.of(
                lower.getNumerator().add(upper.getNumerator()),
                lower.getDenominator().add(upper.getDenominator()));
    }

    private static BigInteger floor(BigFraction positive) {
        return positive.getNumerator().divide(positive.getDenominator());
    }

    private static void requireBound(long bound, long largest) {
        if (bound < 1 || bound > largest) {
            throw RatioException.refused(
                    "denominator bound", bound, "lie from 1 to " + largest, "give the most teeth a wheel may have");
        }
    }
}
