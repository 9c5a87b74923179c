// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.pendulum;

/**
 * What a pendulum's rod is made of, and how it grows with warmth.
 *
 * <p>The metals, glass and deal are those of Beckett, <i>A Rudimentary Treatise on Clocks, Watches and Bells</i>, 8th ed.
 * 1903, pp. 52-53, printed for 1000 °F and divided by 555.6 K.
 */
public enum RodMaterial {
    /** Pine along the grain. */
    DEAL(0.0023),
    /** Flint glass. */
    GLASS(0.0048),
    /** Tempered steel. */
    STEEL(0.0064),
    /** Cast iron. */
    CAST_IRON(0.0066),
    /** A wrought iron rod. */
    IRON(0.0070),
    /** Brass. */
    BRASS(0.0100),
    /** Zinc. */
    ZINC(0.0160),
    /** Lead. */
    LEAD(0.0165),
    /** Printed polylactide, 41e-6 a kelvin (maker's figure in doi 10.2478/msp-2025-0039); other makers print up to 101e-6. */
    PLA(41e-6 * 1000 / 1.8),
    /** Printed polyamide 6, 50e-6 a kelvin (the same table). */
    POLYAMIDE(50e-6 * 1000 / 1.8);

    private final double perThousandFahrenheit;

    RodMaterial(double perThousandFahrenheit) {
        this.perThousandFahrenheit = perThousandFahrenheit;
    }

    /** Coefficient of linear expansion, {@code α}, 1/K. */
    public double expansion() {
        return perThousandFahrenheit / 1000 * 1.8;
    }
}
