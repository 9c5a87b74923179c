// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making;

import drumfall.solver.fitting.FittedMovement;
import drumfall.solver.layout.Layout;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.train.Train;
import java.util.Optional;

/**
 * Whether what turns on a rod that stands still has room for its rolling bearings.
 *
 * <p>It is tried by making the part, so that a list never names a seat that the part would refuse.
 *
 * @param rater rates against the brief that says how the arbors are built
 * @param train the train
 * @param layout where its arbors stand, if they have places; without them pinions stand before their wheels
 */
public record HubRoom(TrainRater rater, Train train, Optional<Layout> layout) {
    /**
     * Why an arbor's part cannot be made as the brief has it, in one sentence; empty if it can.
     *
     * @param arbor its number, from 1 after the drum's, whose rod always turns
     */
    public Optional<String> refusal(int arbor) {
        try {
            MakingSizes sizes = MakingSizes.customary();
            Optional<FramePlaces> places = layout.map(placed ->
                    FramePlaces.of(placed, FittedMovement.of(rater, train, placed, sizes.beyond(rater.brief()))));
            Workshop shop = new Workshop(rater.brief(), train, rater.movement(), sizes, places);
            new TrainParts(shop, new WindingParts(shop), new EscapementParts(shop)).parts(arbor);
            return Optional.empty();
        } catch (IllegalArgumentException refused) {
            return Optional.of(refused.getMessage());
        }
    }
}
