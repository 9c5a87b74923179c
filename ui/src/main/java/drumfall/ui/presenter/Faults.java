// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.ui.design.DesignFault;

/** What went wrong with files, each in one sentence. */
public final class Faults {
    private Faults() {}

    /** The sentence of a fault. */
    public static String sentence(DesignFault fault) {
        return Texts.of("fault." + fault.kind().name(), fault.details().toArray());
    }

    /** The sentence of unsaved work that cannot be kept. */
    static String recovery(DesignFault fault) {
        return Texts.of("fault.recovery", sentence(fault));
    }
}
