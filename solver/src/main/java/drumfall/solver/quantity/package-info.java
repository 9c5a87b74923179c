/**
 * Quantities as people write them: exact values that remember their text.
 *
 * <p>A maker types "5 ft 6 1/2 in" or "9 1/4 lb" and expects to find those words again in the design file, while the
 * solver needs one exact number in one known unit. {@link drumfall.solver.quantity.Quantity} keeps both. The value is a
 * rational number of base units (metres, kilograms, seconds, degrees, newtons and their products), so a limit is met or
 * missed exactly and no comparison carries a tolerance. Every unit's factor is exact but the radian's, which holds π: an
 * angle typed in radians is stored as the exact decimal of its text times 180/π with π to 39 decimals, so that turning it
 * back into radians gives the typed number again.
 *
 * <p>Text is read strictly. What could mean two things, such as a comma, is refused with one line that names the value,
 * the rule and what to write instead; nothing is guessed. Text length, digits and powers of ten are bounded before any
 * arithmetic. {@link drumfall.solver.quantity.QuantityFormat} goes the other way and may round; rounding down is there for
 * durations, which must never be shown as longer than they are.
 *
 * <p>This package uses the JDK and the fraction type of Apache Commons Numbers, and no other package of the solver.
 *
 * <p>Rejected: a class for each dimension with type-safe arithmetic between them. The solver's formulas are few and are
 * written in the textbook's symbols on bare SI doubles or on exact tooth counts; a tower of types would have hidden them and
 * still not have caught a wrong formula.
 */
package drumfall.solver.quantity;
