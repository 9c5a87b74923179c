// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.sheet;

/**
 * One thing wrong with a sheet, as the maker reads it.
 *
 * @param pointer JSON pointer (RFC 6901) of the place in the sheet
 * @param value what stands there, as written; "nothing" if it is absent
 * @param rule which rule it breaks
 * @param remedy what to try
 */
public record SheetProblem(String pointer, String value, String rule, String remedy) {
    /** The problem in one sentence. */
    public String sentence() {
        return "At %s, %s: %s; %s.".formatted(pointer.isEmpty() ? "the top" : pointer, value, rule, remedy);
    }
}
