// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.quantity;

import java.util.List;

/** The kind of a quantity; each kind counts its exact value in one base unit. */
public enum Dimension {
    /** Lengths, counted in metres. */
    LENGTH("a length", "m", true),
    /** Areas, counted in square metres. */
    AREA("an area", "m2", false),
    /** Masses, counted in kilograms. */
    MASS("a mass", "kg", true),
    /** Times, counted in seconds. */
    TIME("a time", "s", true),
    /** Angles, counted exactly in degrees; only {@link Quantity#si()} turns them into radians. */
    ANGLE("an angle", "rad", true),
    /** Forces, counted in newtons. */
    FORCE("a force", "N", false),
    /** Torques, counted in newton metres. */
    TORQUE("a torque", "N m", false),
    /** Densities, counted in kilograms per cubic metre. */
    DENSITY("a density", "kg/m3", false),
    /** Stresses and elastic moduli, counted in pascals. */
    STRESS("a stress", "Pa", false),
    /** Plain numbers and percentages, counted in ones. */
    NUMBER("a number", "1", false);

    private final String noun;
    private final String siSymbol;
    private final boolean takesParts;

    Dimension(String noun, String siSymbol, boolean takesParts) {
        this.noun = noun;
        this.siSymbol = siSymbol;
        this.takesParts = takesParts;
    }

    /** The symbol of the coherent SI unit, in which {@link Quantity#si()} counts. */
    public String siSymbol() {
        return siSymbol;
    }

    /** The name with its article, as a sentence uses it, for example "a length". */
    public String noun() {
        return noun;
    }

    /** Every unit this dimension can be written in, the smallest first. */
    public List<Unit> units() {
        return UnitTable.unitsOf(this);
    }

    /** The unit in which the exact value is counted: the SI unit, but the degree for angles and 1 for numbers. */
    public Unit baseUnit() {
        return UnitTable.baseUnitOf(this);
    }

    /** Whether the quantity may be written in several parts, such as "5 ft 6 in". */
    boolean takesParts() {
        return takesParts;
    }

    /**
     * The unit of the given spelling.
     *
     * @throws QuantityFormatException if this dimension knows no such unit
     */
    public Unit unit(String spelling) {
        return units().stream()
                .filter(unit -> unit.spellings().contains(spelling))
                .findFirst()
                .orElseThrow(() -> QuantityFormatException.unknownUnit(spelling, this));
    }
}
