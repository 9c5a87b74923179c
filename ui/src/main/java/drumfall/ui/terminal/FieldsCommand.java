// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Prints what the fields of a command's JSON mean, or those of a layout file. */
@Command(name = "fields", mixinStandardHelpOptions = true, resourceBundle = Phrases.BUNDLE)
final class FieldsCommand implements Callable<Integer> {
    private static final List<String> COMMANDS =
            List.of("solve", "rate", "ratio", "mesh", "display", "why", "pendulum", "plugins", "layout");

    private final TerminalPlace place;

    @Parameters(index = "0", paramLabel = "COMMAND", descriptionKey = "option.fields")
    private String command;

    FieldsCommand(TerminalPlace place) {
        this.place = place;
    }

    @Override
    public Integer call() {
        if (!COMMANDS.contains(command)) {
            throw RefusedInput.of("fields", command, String.join(", ", COMMANDS));
        }
        TextTable table = TextTable.of("fields.columns");
        fields(command).forEach(field -> table.row(field, Phrases.phrase(key(command, field))));
        table.lines().forEach(place.out()::println);
        return ExitCode.DONE.number();
    }

    /** The documented fields of a command, for example {@code options[].duration_h}, by name. */
    static List<String> fields(String command) {
        String start = key(command, "");
        return Phrases.BOOK.bundle().keySet().stream()
                .filter(key -> key.startsWith(start))
                .map(key -> key.substring(start.length()))
                .sorted()
                .toList();
    }

    private static String key(String command, String field) {
        return "json." + command + "." + field;
    }
}
