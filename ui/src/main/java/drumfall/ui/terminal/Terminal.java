// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import java.io.PrintWriter;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;

/** Runs the program's commands. */
public final class Terminal {
    /** Help is written for a terminal of this many columns. */
    private static final int HELP_COLUMNS = 100;

    private Terminal() {}

    /**
     * Runs a command line in a process of its own: a user's interrupt ends the command early with what is known.
     *
     * @param arguments the command line
     * @return number of an {@link ExitCode}
     */
    public static int runInProcess(String[] arguments) {
        try (StandardStreams streams = new StandardStreams();
                Interruption interruption = Interruption.watched()) {
            int code = run(arguments, TerminalPlace.of(streams.out(), streams.err(), interruption::asked));
            interruption.ended(code);
            return code;
        }
    }

    /** Says that there is no display and prints the front of the demonstration brief instead of opening the window. */
    public static int runWithoutDisplay() {
        try (StandardStreams streams = new StandardStreams()) {
            streams.err().println(Phrases.phrase("no-display"));
        }
        return runInProcess(new String[] {"solve"});
    }

    /**
     * Runs a command line.
     *
     * @param arguments the command line
     * @param out takes what was asked for
     * @param err takes problems
     * @return number of an {@link ExitCode}
     */
    public static int run(String[] arguments, PrintWriter out, PrintWriter err) {
        return run(arguments, TerminalPlace.of(out, err, () -> false));
    }

    static int run(String[] arguments, TerminalPlace place) {
        return run(arguments, place, commands(place));
    }

    static int run(String[] arguments, TerminalPlace place, CommandLine commands) {
        try {
            return commands.execute(arguments);
        } catch (StackOverflowError | OutOfMemoryError fault) {
            return InternalFault.report(fault, place);
        } finally {
            place.out().flush();
            place.err().flush();
        }
    }

    static CommandLine commands(TerminalPlace place) {
        CommandLine commands = new CommandLine(new RootCommand(place))
                .addSubcommand(new SolveCommand(place))
                .addSubcommand(new RateCommand(place))
                .addSubcommand(new RatioCommand(place))
                .addSubcommand(new MeshCommand(place))
                .addSubcommand(new DisplayCommand(place))
                .addSubcommand(new WhyCommand(place))
                .addSubcommand(new PendulumCommand(place))
                .addSubcommand(new ExportCommand(place))
                .addSubcommand(new PluginsCommand(place))
                .addSubcommand(new BriefCommand(place))
                .addSubcommand(new FieldsCommand(place));
        return commands.setOut(place.out())
                .setErr(place.err())
                .setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF))
                .setUsageHelpWidth(HELP_COLUMNS)
                .setParameterExceptionHandler((fault, arguments) -> UsageFault.report(fault, place))
                .setExecutionExceptionHandler((fault, command, parsed) -> ended(fault, place));
    }

    private static int ended(Exception fault, TerminalPlace place) {
        if (fault instanceof RefusedInput refused) {
            refused.sentences().forEach(place.err()::println);
            return ExitCode.BAD_INPUT.number();
        }
        return InternalFault.report(fault, place);
    }
}
