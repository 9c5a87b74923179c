// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.design;

import java.util.Optional;
import java.util.function.Function;

/** What opening a file came to. */
public sealed interface DesignReading {
    /**
     * The file is in order.
     *
     * @param design what it holds
     */
    record Opened(Design design) implements DesignReading {
        @Override
        public <T> T fold(Function<Design, T> opened, Function<DesignFault, T> refused) {
            return opened.apply(design);
        }
    }

    /**
     * The file is refused as a whole.
     *
     * @param fault why
     */
    record Refused(DesignFault fault) implements DesignReading {
        @Override
        public <T> T fold(Function<Design, T> opened, Function<DesignFault, T> refused) {
            return refused.apply(fault);
        }
    }

    /** One answer from either case. */
    <T> T fold(Function<Design, T> opened, Function<DesignFault, T> refused);

    /** The design, if the file is in order. */
    default Optional<Design> accepted() {
        return fold(Optional::of, fault -> Optional.empty());
    }

    /** A refusal. */
    static DesignReading refused(DesignFault.Kind kind, String... details) {
        return new Refused(DesignFault.of(kind, details));
    }
}
