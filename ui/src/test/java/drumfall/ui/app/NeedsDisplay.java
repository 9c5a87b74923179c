// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.app;

import java.awt.GraphicsEnvironment;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.extension.ExtensionContext;

/** Skips window tests by name where there is no display. */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@ExtendWith(NeedsDisplay.Condition.class)
@interface NeedsDisplay {
    /** Looks for a display. */
    final class Condition implements ExecutionCondition {
        @Override
        public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
            return GraphicsEnvironment.isHeadless()
                    ? ConditionEvaluationResult.disabled(
                            context.getDisplayName() + " needs a display; run it under xvfb-run")
                    : ConditionEvaluationResult.enabled("there is a display");
        }
    }
}
