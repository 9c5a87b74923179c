// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fit;

/** Says which value given to a fit calculation cannot stand, why, and what would. */
public final class FitException extends IllegalArgumentException {
    private FitException(String message) {
        super(message);
    }

    /**
     * A refusal in one sentence and one proposal.
     *
     * @param subject name of the value
     * @param value the value with its unit
     * @param owner what the value belongs to
     * @param rule what it must do or be
     * @param maybe what to try
     */
    public static FitException refused(String subject, Object value, String owner, String rule, String maybe) {
        return new FitException("The %s (%s) of %s must %s. Maybe %s.".formatted(subject, value, owner, rule, maybe));
    }

    /**
     * Lets a length pass that lies within its bounds; the refusal proposes the nearest bound.
     *
     * @param subject name of the length
     * @param owner what it belongs to
     * @param value nm
     * @param least nm
     * @param most nm
     * @throws FitException if it lies outside
     */
    public static void requireLength(String subject, String owner, long value, long least, long most) {
        if (value < least || value > most) {
            String rule = "lie from %s to %s".formatted(Nanometres.text(least), Nanometres.text(most));
            String nearest = Nanometres.text(value < least ? least : most);
            throw refused(subject, Nanometres.text(value), owner, rule, "take " + nearest);
        }
    }

    /**
     * Lets a count pass that lies within its bounds.
     *
     * @param subject name of the count
     * @param owner what it belongs to
     * @param value the count
     * @param least smallest allowed
     * @param most largest allowed
     * @throws FitException if it lies outside
     */
    public static void requireCount(String subject, String owner, long value, long least, long most) {
        if (value < least || value > most) {
            String rule = "lie from %d to %d".formatted(least, most);
            throw refused(subject, value, owner, rule, "take " + (value < least ? least : most));
        }
    }

    /**
     * Lets a finite number pass that lies within its bounds.
     *
     * @param subject name of the number
     * @param owner what it belongs to
     * @param value the number
     * @param least smallest allowed
     * @param most largest allowed
     * @param unit unit of all three
     * @throws FitException if it lies outside or is no number
     */
    public static void requireNumber(
            String subject, String owner, double value, double least, double most, String unit) {
        if (!(value >= least && value <= most)) {
            String rule = "lie from %s to %s %s".formatted(least, most, unit);
            throw refused(subject, value + " " + unit, owner, rule, "take " + (value > most ? most : least));
        }
    }

    /**
     * Lets a name pass that has a letter to show.
     *
     * @param owner what is named
     * @param name the name
     * @throws FitException if it is blank
     */
    public static void requireName(String owner, String name) {
        if (name.isBlank()) {
            throw refused("name", "blank", owner, "hold at least 1 visible letter", "name it after its arbor");
        }
    }
}
