// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.sheet;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * What reading a sheet came to: the record, or everything that is wrong with it.
 *
 * @param <R> the record
 */
public sealed interface SheetResult<R> {
    /**
     * A sheet in order.
     *
     * @param record what it says
     */
    record Accepted<R>(R record) implements SheetResult<R> {
        @Override
        public <T> T fold(
                Function<? super R, ? extends T> accepted, Function<List<SheetProblem>, ? extends T> refused) {
            return accepted.apply(record);
        }
    }

    /**
     * A sheet that is not in order.
     *
     * @param problems what is wrong, at least one, in the order of the sheet
     */
    record Refused<R>(List<SheetProblem> problems) implements SheetResult<R> {
        /**
         * Copies the problems.
         *
         * @throws IllegalArgumentException if there is none
         */
        public Refused {
            problems = List.copyOf(problems);
            if (problems.isEmpty()) {
                throw new IllegalArgumentException("The problems (none) of a refused sheet must be at least 1.");
            }
        }

        @Override
        public <T> T fold(
                Function<? super R, ? extends T> accepted, Function<List<SheetProblem>, ? extends T> refused) {
            return refused.apply(problems);
        }
    }

    /**
     * One answer from either case.
     *
     * @param accepted what to make of the record
     * @param refused what to make of the problems
     */
    <T> T fold(Function<? super R, ? extends T> accepted, Function<List<SheetProblem>, ? extends T> refused);

    /** The record, if the sheet is in order. */
    default Optional<R> accepted() {
        return fold(Optional::of, problems -> Optional.empty());
    }

    /** What is wrong; empty if the sheet is in order. */
    default List<SheetProblem> problems() {
        return fold(record -> List.of(), problems -> problems);
    }

    /**
     * The same result after further rules.
     *
     * @param rules gives the problems of a record that was read; none if it is in order
     */
    default SheetResult<R> checkedBy(Function<? super R, List<SheetProblem>> rules) {
        return fold(
                record -> {
                    List<SheetProblem> broken = rules.apply(record);
                    return broken.isEmpty() ? this : new Refused<>(broken);
                },
                problems -> this);
    }
}
