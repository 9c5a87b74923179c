// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.train;

import drumfall.solver.ratio.CountRange;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Lists every motion work within bounds that gives exactly twelve with both meshes on one centre distance.
 *
 * <p>For every cannon pinion, minute wheel and minute pinion the hour wheel follows, {@code 12 c p / w}; so going through
 * the three is going through all.
 *
 * @param leaves leaves allowed on cannon pinion and minute pinion
 * @param wheels teeth allowed on minute wheel and hour wheel
 * @param modules modules to choose from, the same for both meshes or two different ones; at least one
 */
public record MotionWorkSearch(CountRange leaves, CountRange wheels, List<ToothModule> modules) {
    /** Choices of three counts and two modules, done in seconds. */
    private static final long MOST_CHOICES = 100_000_000;

    private static final int TWELVE = 12;

    private static final Comparator<SizedMotionWork> SMALLEST_FIRST = Comparator.comparing(
                    SizedMotionWork::centreDistance)
            .thenComparing(
                    work -> Math.max(work.counts().minuteWheel(), work.counts().hourWheel()))
            .thenComparing(work -> work.counts().cannonPinion())
            .thenComparing(work -> work.counts().minutePinion())
            .thenComparing(SizedMotionWork::cannonModule)
            .thenComparing(SizedMotionWork::minuteModule);

    /**
     * Keeps each module once and checks that all choices can be gone through.
     *
     * @throws IllegalArgumentException if there is no module, or there are more than a hundred million choices
     */
    public MotionWorkSearch {
        modules = modules.stream().distinct().toList();
        if (modules.isEmpty()) {
            throw new IllegalArgumentException("The number of modules (0) must be at least 1. Maybe list one.");
        }
        double choices = (double) leaves.size() * leaves.size() * wheels.size() * modules.size() * modules.size();
        if (choices > MOST_CHOICES) {
            throw new IllegalArgumentException(
                    "The number of choices (%.3g) of a motion work must be at most %d. Maybe narrow the counts."
                            .formatted(choices, MOST_CHOICES));
        }
    }

    /** Every motion work, the smallest centre distance first, then the one of the smaller largest wheel. */
    public List<SizedMotionWork> all() {
        List<SizedMotionWork> found = new ArrayList<>();
        for (int cannon = leaves.least(); cannon <= leaves.most(); cannon++) {
            for (int minuteWheel = wheels.least(); minuteWheel <= wheels.most(); minuteWheel++) {
                for (int minutePinion = leaves.least(); minutePinion <= leaves.most(); minutePinion++) {
                    add(cannon, minuteWheel, minutePinion, found);
                }
            }
        }
        found.sort(SMALLEST_FIRST);
        return List.copyOf(found);
    }

    private void add(int cannon, int minuteWheel, int minutePinion, List<SizedMotionWork> found) {
        long product = Math.multiplyExact(Math.multiplyExact((long) TWELVE, cannon), minutePinion);
        if (product % minuteWheel == 0 && wheels.contains(product / minuteWheel)) {
            addSizes(new MotionWork(cannon, minuteWheel, minutePinion, (int) (product / minuteWheel)), found);
        }
    }

    private void addSizes(MotionWork counts, List<SizedMotionWork> found) {
        for (ToothModule first : modules) {
            for (ToothModule second : modules) {
                if (onOneDistance(counts, first, second)) {
                    found.add(new SizedMotionWork(counts, first, second));
                }
            }
        }
    }

    private static boolean onOneDistance(MotionWork counts, ToothModule first, ToothModule second) {
        return SizedMotionWork.doubledDistance(first, counts.cannonPinion(), counts.minuteWheel())
                == SizedMotionWork.doubledDistance(second, counts.minutePinion(), counts.hourWheel());
    }
}
