// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.explain;

import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import drumfall.solver.brief.Brief;
import drumfall.solver.brief.BriefReader;
import drumfall.solver.brief.BriefWriter;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A brief eased by some steps, narrowed to the trains that fewer steps do not have.
 *
 * <p>Where easing a range only adds trains and fewer steps are proved to have none, a train must lie in the part of the
 * range that is new. The other end of the range moves up to that part; what else is asked stays as it is, so that the
 * narrowed brief has a train exactly if the eased one has. A limit shared by both parts does no harm.
 */
final class NewTrains {
    /** Ranges without a step of their own: the proved value itself is the other end. */
    private static final Set<String> RANGES = Set.of("/beat/pendulumLength", "/beat/beatsPerHour");

    /** Ranges of single values: the other end is the first value that is new. */
    private static final Set<String> VALUES =
            Set.of("/escapement/teeth", "/drum/diameter", "/train/above", "/train/below");

    private final Brief brief;
    private final Easing easing;
    private final EasingSteps steps;
    private final String group;
    private final String field;

    NewTrains(Brief brief, Easing easing, EasingSteps steps) {
        this.brief = brief;
        this.easing = easing;
        this.steps = steps;
        int slash = easing.pointer().lastIndexOf('/');
        this.group = easing.pointer().substring(0, slash);
        this.field = easing.pointer().substring(slash + 1);
    }

    /**
     * The brief after some steps, narrowed where that is possible.
     *
     * @param count the steps
     * @param without fewer steps, proved to have no train
     */
    Brief at(int count, int without) {
        Brief whole = steps.at(count).orElseThrow();
        return narrowed(whole, without).orElse(whole);
    }

    private Optional<Brief> narrowed(Brief whole, int without) {
        ObjectNode tree = BriefWriter.tree(whole);
        ObjectNode range = (ObjectNode) tree.at(group);
        if (RANGES.contains(group)) {
            range.set(otherEnd(), TextNode.valueOf(steps.text(without)));
        } else if (group.equals("/run")) {
            range.set(field.equals("atLeast") ? "atMost" : "atLeast", TextNode.valueOf(steps.text(without)));
            range.set("wanted", TextNode.valueOf(steps.text(without)));
        } else if (VALUES.contains(group) && onOwnSteps()) {
            range.set(
                    otherEnd(),
                    BriefWriter.tree(steps.at(without + 1).orElseThrow()).at(easing.pointer()));
        } else {
            return Optional.empty();
        }
        return BriefReader.read(tree).accepted();
    }

    private String otherEnd() {
        return field.equals("from") ? "to" : "from";
    }

    /** Whether steps from the upper end meet the values that the range has: else the new ones lie between them. */
    private boolean onOwnSteps() {
        return switch (group) {
            case "/drum/diameter" -> {
                Brief.Steps sizes = brief.drum().diameter();
                BigFraction count = sizes.to()
                        .exact()
                        .subtract(sizes.from().exact())
                        .divide(sizes.step().exact());
                yield field.equals("from") || count.getDenominator().bitLength() == 1;
            }
            case "/escapement/teeth" -> {
                Brief.CountSteps teeth = brief.escapement().teeth();
                yield field.equals("from") || (teeth.to() - teeth.from()) % teeth.step() == 0;
            }
            default -> true;
        };
    }
}
