// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.sheet;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import java.util.Optional;

/** A word of the trade that a sheet knows but cannot take yet: it is not offered, and refused by name where it is written. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.FIELD)
public @interface Withheld {
    /** Why it cannot be taken. */
    String rule();

    /** What to write instead. */
    String remedy();

    /** Finds the mark of a constant. */
    final class Mark {
        private Mark() {}

        /**
         * The mark; empty for a word that can be taken.
         *
         * @param constant the word
         */
        public static Optional<Withheld> of(Enum<?> constant) {
            try {
                return Optional.ofNullable(
                        constant.getDeclaringClass().getField(constant.name()).getAnnotation(Withheld.class));
            } catch (NoSuchFieldException fault) {
                throw new IllegalStateException("The constant (%s) must be a field.".formatted(constant), fault);
            }
        }
    }
}
