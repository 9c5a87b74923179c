// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import drumfall.solver.brief.BriefSchema;
import drumfall.solver.brief.BundledBriefs;
import java.util.concurrent.Callable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Prints a bundled brief or the schema of briefs, to start one's own from. */
@Command(name = "brief", mixinStandardHelpOptions = true, resourceBundle = Phrases.BUNDLE)
final class BriefCommand implements Callable<Integer> {
    private final TerminalPlace place;

    @ArgGroup
    private Choice choice = new Choice();

    BriefCommand(TerminalPlace place) {
        this.place = place;
    }

    @Override
    public Integer call() {
        place.out().print(choice.text());
        return ExitCode.DONE.number();
    }

    /** One of three things to print. */
    static final class Choice {
        @Parameters(index = "0", arity = "0..1", paramLabel = "NAME", descriptionKey = "option.name")
        private String name = BundledBriefs.WEEKLY_WALL_CLOCK;

        @Option(names = "--schema", descriptionKey = "option.schema")
        private boolean schema;

        @Option(names = "--names", descriptionKey = "option.names")
        private boolean names;

        String text() {
            if (schema) {
                return BriefSchema.text();
            }
            return names
                    ? String.join("\n", BundledBriefs.names()) + "\n"
                    : BundledBriefs.text(name).orElseThrow(() -> SheetTexts.unknown(name));
        }
    }
}
