// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.design;

import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;

/** What opening a file came to. */
public sealed interface DesignReading {
    /**
     * The file is in order.
     *
     * @param design what it holds
     * @param own whether the file is the design's own, to be saved to again; a brief's file is not
     */
    record Opened(Design design, boolean own) implements DesignReading {
        @Override
        public <T> T fold(BiFunction<Design, Boolean, T> opened, Function<DesignFault, T> refused) {
            return opened.apply(design, own);
        }
    }

    /**
     * The file is refused as a whole.
     *
     * @param fault why
     */
    record Refused(DesignFault fault) implements DesignReading {
        @Override
        public <T> T fold(BiFunction<Design, Boolean, T> opened, Function<DesignFault, T> refused) {
            return refused.apply(fault);
        }
    }

    /** One answer from either case: of a design, and whether the file is its own, or of a fault. */
    <T> T fold(BiFunction<Design, Boolean, T> opened, Function<DesignFault, T> refused);

    /** The design, if the file is in order. */
    default Optional<Design> accepted() {
        return fold((design, own) -> Optional.of(design), fault -> Optional.empty());
    }

    /** A refusal. */
    static DesignReading refused(DesignFault.Kind kind, String... details) {
        return new Refused(DesignFault.of(kind, details));
    }
}
