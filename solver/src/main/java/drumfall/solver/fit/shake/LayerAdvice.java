// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fit.shake;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Finds the part whose height, changed by whole layers, keeps an arbor in its band most surely. */
final class LayerAdvice {
    private final EndShake shake;
    private final double before;

    private LayerAdvice(EndShake shake) {
        this.shake = shake;
        before = shake.chance().outside();
    }

    /** The best change; of equal ones that with the fewest layers, then of the part listed first; empty if none helps. */
    static Optional<LayerChange> of(EndShake shake) {
        LayerAdvice advice = new LayerAdvice(shake);
        return IntStream.range(0, shake.stack().contributions().size())
                .boxed()
                .flatMap(advice::changes)
                .filter(change -> change.gain() > 0)
                .min(Comparator.comparingDouble(LayerChange::after)
                        .thenComparingInt(change -> Math.abs(change.layers())));
    }

    /**
     * All changes of a part that can be best: from none to past the one that puts the mean nearest to the middle of the band.
     *
     * <p>The chance is symmetric about the middle and quasi-convex, so nothing beyond both neighbours of the
     * middle is better; one layer more on either side is for the drift of the changed height itself.
     */
    private Stream<LayerChange> changes(int part) {
        Contribution contribution = shake.stack().contributions().get(part);
        return contribution.range().stream().flatMap(range -> {
            double step = (double) contribution.direction().sign() * contribution.count() * range.layer();
            double wanted = offset() / step;
            int first = (int) Math.max(-range.fewer(contribution.nominal()), Math.floor(Math.min(0, wanted)) - 1);
            int last = (int) Math.min(range.more(contribution.nominal()), Math.ceil(Math.max(0, wanted)) + 1);
            return IntStream.rangeClosed(first, last)
                    .filter(layers -> layers != 0)
                    .mapToObj(layers -> change(part, layers));
        });
    }

    /** How far the mean, midway between its hottest and coldest, lies from the middle of the band, nm. */
    private double offset() {
        double middle = (shake.band().least() + shake.band().most()) / 2.0;
        Temperatures room = shake.temperatures();
        return middle - (shake.meanAt(room.coldest()) + shake.meanAt(room.hottest())) / 2;
    }

    private LayerChange change(int part, int layers) {
        Contribution contribution = shake.stack().contributions().get(part);
        ArborStack changed = shake.stack().withLayers(part, layers);
        double after = shake.withStack(changed).chance().outside();
        long height = layers * contribution.range().orElseThrow().layer();
        return new LayerChange(shake.stack().arbor(), contribution.name(), layers, height, before, after);
    }
}
