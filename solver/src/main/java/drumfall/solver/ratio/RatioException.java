// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.ratio;

/** Says which number given to a ratio calculation cannot stand, and why. */
public final class RatioException extends IllegalArgumentException {
    private RatioException(String message) {
        super(message);
    }

    /**
     * A refusal in two sentences: "The subject (value) must rule. Maybe maybe."
     *
     * @param subject what was given
     * @param value as it was given
     * @param rule what it must do, with its unit
     * @param maybe what could be done about it
     */
    public static RatioException refused(String subject, Object value, String rule, String maybe) {
        return new RatioException("The %s (%s) must %s. Maybe %s.".formatted(subject, value, rule, maybe));
    }
}
