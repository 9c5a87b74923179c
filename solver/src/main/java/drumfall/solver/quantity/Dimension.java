// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.quantity;

/** The kind of a quantity; its SI unit is the one in which its value counts. */
public enum Dimension {
    /** Metres. */
    LENGTH("m");

    private final String siUnit;

    Dimension(String siUnit) {
        this.siUnit = siUnit;
    }

    /** The symbol of the SI unit, as printed. */
    public String siUnit() {
        return siUnit;
    }
}
