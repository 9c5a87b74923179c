// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.solver.brief.BriefSchema;
import drumfall.solver.brief.BundledBriefs;
import drumfall.ui.terminal.TerminalBench.Run;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;

class TerminalTest {
    @TempDir
    Path folder;

    private TerminalBench bench;

    @BeforeEach
    void open() {
        bench = new TerminalBench(folder);
    }

    @ParameterizedTest
    @EnumSource(ExitCode.class)
    void the_help_documents_every_exit_code(ExitCode code) {
        Run run = bench.run("--help");
        assertThat(run.code()).isEqualTo(ExitCode.DONE.number());
        assertThat(run.lines())
                .anyMatch(line -> line.strip().startsWith(code.number() + "   ")
                        || line.strip().startsWith(code.number() + "  "));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "solve",
                "rate",
                "ratio",
                "mesh",
                "display",
                "why",
                "pendulum",
                "export",
                "plugins",
                "brief",
                "fields"
            })
    void every_command_has_its_help(String command) {
        Run run = bench.run(command, "--help");
        assertThat(run.code()).isEqualTo(ExitCode.DONE.number());
        assertThat(run.out()).startsWith("Usage: drumfall " + command).doesNotContain("''");
    }

    @Test
    void every_option_and_command_is_described() {
        CommandLine commands = Terminal.commands(bench.place(new StringWriter(), new StringWriter(), false));
        assertThat(commands.getSubcommands().values()).allSatisfy(command -> {
            CommandSpec spec = command.getCommandSpec();
            assertThat(spec.usageMessage().description()).as(spec.name()).isNotEmpty();
            assertThat(spec.args())
                    .allSatisfy(argument -> assertThat(argument.description())
                            .as(spec.name() + " " + argument.paramLabel())
                            .isNotEmpty());
        });
    }

    @Test
    void the_version_is_the_one_of_the_build() {
        assertThat(bench.run("--version").out()).matches("Drumfall \\d+\\.\\d+\\.\\d+\\R");
    }

    @Test
    void no_command_is_answered_by_the_help() {
        Run run = bench.run();
        assertThat(run.code()).isEqualTo(ExitCode.BAD_INPUT.number());
        assertThat(run.err()).contains("Commands:", "solve", "rate", "ratio");
    }

    @Test
    void bundled_briefs_and_schema_are_printed_as_they_are() {
        assertThat(bench.run("brief").out())
                .isEqualTo(BundledBriefs.text(BundledBriefs.WEEKLY_WALL_CLOCK).orElseThrow());
        assertThat(bench.run("brief", "desk-clock").out())
                .isEqualTo(BundledBriefs.text("desk-clock").orElseThrow());
        assertThat(bench.run("brief", "--schema").out()).isEqualTo(BriefSchema.text());
        assertThat(bench.run("brief", "--names").lines()).isEqualTo(BundledBriefs.names());
    }

    @Test
    void a_fault_of_the_program_is_one_sentence_and_a_file_with_the_details() throws IOException {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        TerminalPlace place = bench.place(out, err, false);
        CommandLine commands = Terminal.commands(place).addSubcommand(new Failing());

        int code = Terminal.run(new String[] {"failing"}, place, commands);

        assertThat(code).isEqualTo(ExitCode.INTERNAL_FAULT.number());
        assertThat(err.toString().lines()).hasSize(1);
        assertThat(err.toString()).doesNotContain("\tat ").contains("The program itself is at fault");
        assertThat(Files.readString(faultFile())).contains("the drum is hollow", "\tat ");
    }

    private Path faultFile() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.getFileName().toString().startsWith("drumfall-fault-"))
                    .findFirst()
                    .orElseThrow();
        }
    }

    @Test
    void a_fault_whose_details_cannot_be_written_is_still_one_sentence() {
        StringWriter err = new StringWriter();
        TerminalPlace place = new TerminalBench(folder).place(new StringWriter(), err, false);
        TerminalPlace nowhere = new TerminalPlace(
                place.out(), place.err(), false, place.interrupted(), List.of(), folder.resolve("nowhere"));

        assertThat(InternalFault.report(new IllegalStateException("hollow"), nowhere))
                .isEqualTo(ExitCode.INTERNAL_FAULT.number());
        place.err().flush();
        assertThat(err.toString()).contains("IllegalStateException").doesNotContain("\tat ");
        assertThat(err.toString().lines()).hasSize(1);
    }

    /** A command with a fault. */
    @Command(name = "failing")
    static final class Failing implements Callable<Integer> {
        @Override
        public Integer call() {
            throw new IllegalStateException("the drum is hollow");
        }
    }
}
