// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.sheet;

import drumfall.solver.quantity.Dimension;
import java.lang.annotation.ElementType;
import java.lang.annotation.Repeatable;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * What a quantity of a sheet measures and between which bounds it must lie; bounds are written as a maker writes them.
 *
 * <p>Repeated, it says that the quantity may measure any one of several things, as a resolution does.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
@Repeatable(Measure.Any.class)
public @interface Measure {
    /** The dimension. */
    Dimension value();

    /** The quantity must be more than this; empty for no such bound. */
    String over() default "";

    /** The quantity must be at least this; empty for no such bound. */
    String from() default "";

    /** The quantity must be at most this; empty for no such bound. */
    String to() default "";

    /** The quantity must be less than this; empty for no such bound. */
    String under() default "";

    /** Several measures, any one of which will do. */
    @Retention(RetentionPolicy.RUNTIME)
    @Target(ElementType.RECORD_COMPONENT)
    @interface Any {
        /** The measures, tried in order; no unit may belong to two of them. */
        Measure[] value();
    }
}
