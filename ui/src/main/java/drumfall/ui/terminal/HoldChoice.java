// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import com.fasterxml.jackson.databind.node.ObjectNode;
import drumfall.solver.brief.Brief;
import drumfall.solver.brief.BriefReader;
import drumfall.solver.brief.BriefWriter;
import drumfall.solver.sheet.SheetProblem;
import drumfall.ui.terminal.Hold.HeldEntry;
import java.util.List;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What the command line holds fast besides the brief's own locks. */
final class HoldChoice {
    @Option(names = "--hold", paramLabel = "WHAT=VALUE", descriptionKey = "option.hold")
    private List<String> holds = List.of();

    @Mixin
    private HolesChoice holes;

    /** Holes that are kept first, so that a hold may take the place of one of them. */
    Brief applyTo(Brief brief, TerminalPlace place) {
        return held(holes.applyTo(brief, place));
    }

    private Brief held(Brief brief) {
        if (holds.isEmpty()) {
            return brief;
        }
        ObjectNode tree = BriefWriter.tree(brief);
        ObjectNode locks = (ObjectNode) tree.get("locks");
        List<HeldEntry> held =
                holds.stream().map(Hold::parse).map(hold -> hold.putInto(locks)).toList();
        return BriefReader.read(tree).fold(record -> record, problems -> {
            throw new RefusedInput(
                    problems.stream().map(problem -> sentence(problem, held)).toList());
        });
    }

    /** The problem at the option that caused it, where it is plain which one did. */
    private static String sentence(SheetProblem problem, List<HeldEntry> held) {
        return held.stream()
                .filter(entry -> entry.concerns(problem.pointer()))
                .findFirst()
                .map(entry -> new SheetProblem(
                        "--hold " + entry.nameFor(problem.pointer()),
                        problem.value(),
                        problem.rule(),
                        problem.remedy()))
                .orElse(problem)
                .sentence();
    }
}
