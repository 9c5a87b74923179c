/**
 * Fit: what the maker drills, prints and cuts so that arbors turn freely and neither bind nor rattle.
 *
 * <p>Below this package stand {@code layer} (heights in whole layers), {@code bore} (bores, bearing seats),
 * {@code shake} (end shake) and {@code cutting} (arbors from stock rods). They take plain values and know neither brief nor
 * train. Lengths are whole nanometres: every size in 64ths of an inch is 396 875 nm times a whole number and every metric
 * size is whole too, so that sums, layers and cuts are exact in a {@code long}; what is not whole by nature (a mean, a
 * thermal drift) is a {@code double} in nanometres. May depend on the fraction type of Apache Commons Numbers and on no other package of the solver.
 *
 * <p>Rejected: metres in {@code double} with a tolerance in each comparison. Whether a part is a whole number of layers, or a
 * sixth arbor still comes off a rod, must not hang on the last bit of a sum.
 */
package drumfall.solver.fit;
