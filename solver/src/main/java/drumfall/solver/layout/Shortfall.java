// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout;

import java.util.Optional;

/**
 * A rule that is violated, and by how much.
 *
 * @param rule the rule, which says what asked and found mean
 * @param first a part
 * @param second the part it clashes with, if it is not the frame or the rule itself
 * @param asked nm
 * @param found nm
 */
public record Shortfall(Rule rule, Part first, Optional<Part> second, long asked, long found) {
    /** Two parts against each other. */
    public static Shortfall between(Rule rule, Part first, Part second, long asked, long found) {
        return new Shortfall(rule, first, Optional.of(second), asked, found);
    }

    /** One part against the frame or a lock. */
    public static Shortfall of(Rule rule, Part part, long asked, long found) {
        return new Shortfall(rule, part, Optional.empty(), asked, found);
    }

    /** How much is missing, nm, not negative. */
    public long amount() {
        return Math.abs(asked - found);
    }

    /** The violation in one line, for those who develop with the library. */
    @Override
    public String toString() {
        return "%s: %s%s asks %d nm, finds %d nm"
                .formatted(rule, first, second.map(part -> " and " + part).orElse(""), asked, found);
    }
}
