// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import drumfall.solver.brief.Brief;
import drumfall.solver.brief.BriefReader;
import drumfall.ui.plugin.PluginFolder;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** A folder with a small brief in it, in which commands are run. */
final class TerminalBench {
    private static final JsonMapper MAPPER = new JsonMapper();

    final Path folder;
    private List<PluginFolder> plugins = List.of();

    TerminalBench(Path folder) {
        this.folder = folder;
        write("small.json", smallText());
    }

    /** A brief of few choices, searched in about a second. */
    static String smallText() {
        try (InputStream stream = TerminalBench.class.getResourceAsStream("small-bench-clock.json")) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    static Brief small() {
        return BriefReader.read(smallText()).accepted().orElseThrow();
    }

    TerminalBench plugins(Path where) {
        plugins = List.of(new PluginFolder(PluginFolder.Origin.USER, where));
        return this;
    }

    String file(String name) {
        return folder.resolve(name).toString();
    }

    void write(String name, String text) {
        try {
            Files.writeString(folder.resolve(name), text);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** Writes the small brief with one entry changed. */
    void writeEdited(String name, String pointer, String json) {
        ObjectNode tree = (ObjectNode) json(smallText());
        JsonPointer place = JsonPointer.compile(pointer);
        ((ObjectNode) tree.at(place.head())).set(place.last().getMatchingProperty(), json(json));
        write(name, tree.toPrettyString());
    }

    static JsonNode json(String text) {
        try {
            return MAPPER.readTree(text);
        } catch (JsonProcessingException broken) {
            throw new IllegalArgumentException("The text of a test is not JSON: " + text, broken);
        }
    }

    /** Runs a command line; an argument that begins with {@code @} names a file of the bench. */
    Run run(String... arguments) {
        return run(false, arguments);
    }

    Run runInterrupted(String... arguments) {
        return run(true, arguments);
    }

    private Run run(boolean interrupted, String... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        TerminalPlace place = place(out, err, interrupted);
        int code = Terminal.run(atFiles(arguments), place);
        return new Run(code, out.toString(), err.toString());
    }

    TerminalPlace place(StringWriter out, StringWriter err, boolean interrupted) {
        return new TerminalPlace(new PrintWriter(out), new PrintWriter(err), false, () -> interrupted, plugins, folder);
    }

    private String[] atFiles(String... arguments) {
        String[] resolved = arguments.clone();
        for (int i = 0; i < resolved.length; i++) {
            resolved[i] = resolved[i].startsWith("@") ? file(resolved[i].substring(1)) : resolved[i];
        }
        return resolved;
    }

    /** What a command came to. */
    record Run(int code, String out, String err) {
        List<String> lines() {
            return out.lines().toList();
        }

        JsonNode json() {
            return TerminalBench.json(out);
        }
    }
}
