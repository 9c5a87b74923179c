/**
 * A layout written down: a file of places and planes that is read back without loss, by whoever drew it.
 *
 * <p>The file says where things stand and nothing of what was asked, so that the same places can be held against the train,
 * the frame and the gaps of any brief. Lengths are texts with their unit as in every sheet; a nanometre is the sixth decimal
 * of a millimetre, so what was placed comes back as it was. Reading ends with a {@link drumfall.solver.layout.Layout} or with
 * everything that keeps the file from being one; whether that layout is sound is for {@code layout.check} to say.
 *
 * <p>May depend on layout, its sizes, {@code sheet} and {@code quantity}. Rejected: the need in the file as well. It would
 * be checked against the sizes that it brought along, and a layout drawn for other teeth would pass.
 */
package drumfall.solver.layout.written;
