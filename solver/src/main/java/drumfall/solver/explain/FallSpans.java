// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.explain;

import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import drumfall.solver.brief.Brief;
import drumfall.solver.brief.BriefReader;
import drumfall.solver.brief.BriefWriter;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * One brief for several heights of fall, met by every train that meets the brief at any of them.
 *
 * <p>Height decides nothing but turns of the drum: {@code n} turns at {@code F} are {@code n F'/F} at {@code F'}, and so is
 * the duration. At the far end {@code F'} of a span that begins at {@code F}, demands that easing makes easier are easiest.
 * Demands that it makes harder are taken as at the near end: the limit of the duration is moved by {@code F'/F}; and
 * {@code (n + 2) s} at any height between is at least {@code (n' + 2) s F/F'}, so the spacing is moved by {@code F/F'}. Where
 * the fall gets lower, turns get fewer and the shortest duration is moved in the same way. What is moved is rounded to the
 * less strict side. If the far end proves empty, so is every height of the span.
 */
final class FallSpans {
    private static final MathContext DOWN = new MathContext(15, RoundingMode.FLOOR);
    private static final MathContext UP = new MathContext(15, RoundingMode.CEILING);

    private final EasingSteps steps;

    FallSpans(EasingSteps steps) {
        this.steps = steps;
    }

    /**
     * The brief of a span, unless such a brief is not in order.
     *
     * @param near the first step
     * @param far the last step, more than {@code near}
     */
    Optional<Brief> over(int near, int far) {
        Brief brief = steps.at(far).orElseThrow();
        BigFraction stretch = brief.fall()
                .height()
                .exact()
                .divide(steps.at(near).orElseThrow().fall().height().exact());
        ObjectNode tree = BriefWriter.tree(brief);
        ObjectNode run = (ObjectNode) tree.get("run");
        if (stretch.compareTo(BigFraction.ONE) > 0) {
            run.set("atMost", text(brief.run().atMost().exact().multiply(stretch), UP, " s"));
            ((ObjectNode) tree.get("drum"))
                    .set("turnSpacing", text(brief.drum().turnSpacing().exact().divide(stretch), DOWN, ""));
        } else {
            run.set("atLeast", text(brief.run().atLeast().exact().multiply(stretch), DOWN, " s"));
        }
        return BriefReader.read(tree).accepted();
    }

    private static TextNode text(BigFraction value, MathContext rounding, String unit) {
        return TextNode.valueOf(new BigDecimal(value.getNumerator())
                        .divide(new BigDecimal(value.getDenominator()), rounding)
                        .toPlainString()
                + unit);
    }
}
