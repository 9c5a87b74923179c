// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.api;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * How far a type of the api may be relied on.
 *
 * @since 1.0
 */
@Documented
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.TYPE)
@Stability(level = Stability.Level.STABLE, since = "1.0")
public @interface Stability {
    /** What is promised. */
    Level level();

    /** Version of the api that brought the type, for example {@code "1.0"}. */
    String since();

    /**
     * What is promised of a type.
     *
     * @since 1.0
     */
    enum Level {
        /** Nothing is removed or changed before the next major version of the api. */
        STABLE,
        /** May change or go in any version; meant for tests, not for plugins in use. */
        EXPERIMENTAL
    }
}
