// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth;

import drumfall.solver.teeth.choice.ToothFamily;
import drumfall.solver.train.ToothModule;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Teeth chosen for each pair of counts and measured by the contact of their drawn flanks. Safe for several threads.
 *
 * <p>Nozzle, thinning and errors of the centre distance are lengths, so in modules they shrink as the module grows; a
 * pair is chosen at the smallest module of the brief at which one can be printed, and serves every larger one. That is
 * sound because every limit only slackens: sections must be so many extrusion widths thick, and a tooth whose tip bulges
 * gains more widths than it loses section; what is left between trailing flanks is what is left as drawn plus a multiple of
 * thinning and error, so it lies between what was found at the smaller module and what is left as drawn, neither of them
 * negative; tips move away from the ends of the usable flanks, and the contact ratio at the widest centres rises. Form
 * factor and worst torque at the smaller module are the less favourable. In return the curve of a pair of counts does not
 * depend on its module.
 *
 * <p>Centre distances stay {@code m (z + p) / 2}, as train and parts compute them exactly, so the sum of profile shifts of
 * an involute pair is nought.
 */
public final class ContactTeeth implements MeshLoss {
    /** Beyond the brief's largest module a pair is looked for in the steps of ISO 54's preferred series, roughly. */
    private static final double STEP = 1.25;

    /** Nine steps make a module seven times as large; errors and nozzle are next to nothing then. */
    private static final int STEPS = 9;

    private final ToothNeeds needs;
    private final Map<Integer, Optional<Served>> served = new ConcurrentHashMap<>();

    /** Teeth and the smallest module that they serve. */
    private record Served(ToothModule from, MeshTeeth teeth) {}

    /**
     * Teeth for the needs of a train.
     *
     * @param needs form, friction, errors, nozzle and modules
     */
    public ContactTeeth(ToothNeeds needs) {
        this.needs = needs;
    }

    @Override
    public String label() {
        String angle = needs.pressureAngle()
                .map(degrees ->
                        " " + BigDecimal.valueOf(degrees).stripTrailingZeros().toPlainString() + "°")
                .orElse(needs.family() == ToothFamily.INVOLUTE ? ", pressure angle chosen" : "");
        return needs.family().name().toLowerCase(Locale.ROOT) + angle + ", contact of the drawn teeth";
    }

    @Override
    public Optional<MeshTeeth> teeth(int toothCount, int leafCount, ToothModule module) {
        return served(toothCount, leafCount)
                .filter(found -> found.from.compareTo(module) <= 0)
                .map(Served::teeth);
    }

    @Override
    public Optional<MeshTeeth> atAnyModule(int toothCount, int leafCount) {
        return served(toothCount, leafCount).map(Served::teeth).or(() -> beyond(toothCount, leafCount));
    }

    private Optional<Served> served(int toothCount, int leafCount) {
        int key = toothCount << 16 | leafCount;
        Optional<Served> known = served.get(key);
        if (known == null) {
            // Found outside the map's lock, which would hold up other pairs for milliseconds; finding twice does no
            // harm.
            known = smallest(toothCount, leafCount);
            served.put(key, known);
        }
        return known;
    }

    private Optional<Served> smallest(int toothCount, int leafCount) {
        for (ToothModule module : needs.modules()) {
            Optional<MeshTeeth> teeth = TeethFinder.find(needs, toothCount, leafCount, module.metres());
            if (teeth.isPresent()) {
                return Optional.of(new Served(module, teeth.get()));
            }
        }
        return Optional.empty();
    }

    private Optional<MeshTeeth> beyond(int toothCount, int leafCount) {
        double module = needs.modules().get(needs.modules().size() - 1).metres();
        for (int i = 0; i < STEPS; i++) {
            module *= STEP;
            Optional<MeshTeeth> teeth = TeethFinder.find(needs, toothCount, leafCount, module);
            if (teeth.isPresent()) {
                return teeth;
            }
        }
        return Optional.empty();
    }
}
