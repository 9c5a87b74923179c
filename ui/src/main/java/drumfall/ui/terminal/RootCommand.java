// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import drumfall.ui.wording.ProgramVersion;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The program without a command: prints its help. */
@Command(
        name = "drumfall",
        mixinStandardHelpOptions = true,
        versionProvider = RootCommand.Version.class,
        resourceBundle = Phrases.BUNDLE)
final class RootCommand implements Callable<Integer> {
    private final TerminalPlace place;

    @Spec
    private CommandSpec spec;

    RootCommand(TerminalPlace place) {
        this.place = place;
    }

    @Override
    public Integer call() {
        spec.commandLine().usage(place.err());
        return ExitCode.BAD_INPUT.number();
    }

    /** Names the program and its version. */
    static final class Version implements IVersionProvider {
        @Override
        public String[] getVersion() {
            return new String[] {Phrases.phrase("version", ProgramVersion.text())};
        }
    }
}
