// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import java.util.Optional;

/** What there is to see of the power of the chosen train. */
public sealed interface PowerState {
    /** The power, if it is reckoned. */
    default Optional<PowerPicture> picture() {
        return Optional.empty();
    }

    /** What is the matter and what to do next; empty if all is well. */
    Optional<String> sentence();

    /** No train is chosen. */
    record NoTrain() implements PowerState {
        @Override
        public Optional<String> sentence() {
            return Optional.of(Texts.of("power.notrain") + " " + Texts.of("power.notrain.next"));
        }
    }

    /** Being reckoned for the first time. */
    record Reckoning() implements PowerState {
        @Override
        public Optional<String> sentence() {
            return Optional.of(Texts.of("power.reckoning"));
        }
    }

    /** It broke down. */
    record Failed() implements PowerState {
        @Override
        public Optional<String> sentence() {
            return Optional.of(Texts.of("power.broken"));
        }
    }

    /**
     * Reckoned.
     *
     * @param power at the setting asked for
     * @param sentence that the weight does not drive the train, and what would, if so
     */
    record Reckoned(PowerPicture power, Optional<String> sentence) implements PowerState {
        @Override
        public Optional<PowerPicture> picture() {
            return Optional.of(power);
        }
    }
}
