// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.explain;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import drumfall.solver.brief.TrainReader;
import drumfall.solver.brief.TrainSheet;
import drumfall.solver.sheet.SheetProblem;
import drumfall.solver.sheet.SheetResult;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Reads a train written in one line as a front shows it, its drum and falls behind, for example
 * {@code 85/10 m1.5 | 66/12 m1.5 . 83/12 m1 E21 drum 36 mm falls 2}.
 *
 * <p>Meshes stand in order from the drum, a bar at the centre arbor, a point in the middle or on the line between meshes.
 */
public final class TrainNotation {
    private static final String EXAMPLE = "85/10 m1.5 | 66/12 m1.5 . 83/12 m1 E21 drum 36 mm falls 2";

    private static final Pattern END =
            Pattern.compile("(?<meshes>.*?)(?:\\s*[.·])?\\s*\\bE\\s?(?<escape>[0-9]{1,9})\\s*(?<rest>.*)");
    private static final Pattern REST =
            Pattern.compile("drum\\s+(?<drum>.+?)\\s*[,.·]?\\s+falls\\s+(?<falls>[0-9]{1,9})");
    private static final Pattern MESH = Pattern.compile(
            "(?<wheel>[0-9]{1,9})\\s*/\\s*(?<leaves>[0-9]{1,9})\\s+m\\s?(?<module>[0-9.]{1,20})(?:\\s?mm)?");
    private static final Pattern BETWEEN = Pattern.compile("\\s+\\.\\s+|\\s*·\\s*");

    private TrainNotation() {}

    /**
     * The train that a line stands for.
     *
     * @param line the line
     * @return the train as a sheet, or what is wrong, one problem for each fault
     */
    public static SheetResult<TrainSheet> read(String line) {
        Matcher end = END.matcher(line.strip());
        if (!end.matches()) {
            return refused(line, "the escape wheel is missing", "write E and its teeth behind the last mesh");
        }
        Matcher rest = REST.matcher(end.group("rest"));
        if (!rest.matches()) {
            return refused(
                    end.group("rest"),
                    "drum and falls must stand behind the escape wheel",
                    "write them as in drum 36 mm falls 2");
        }
        return sides(end.group("meshes"))
                .map(sides -> read(sides, end, rest))
                .orElseGet(() -> refused(
                        end.group("meshes"),
                        "one bar must stand where the centre arbor is",
                        "write the meshes from the drum before it and those to the escape wheel behind it"));
    }

    private static SheetResult<TrainSheet> read(List<List<String>> sides, Matcher end, Matcher rest) {
        ObjectNode tree = JsonNodeFactory.instance
                .objectNode()
                .put("format", "drumfall-train")
                .put("version", 1)
                .put("name", "typed");
        var meshes = tree.putArray("meshes");
        for (String text : sides.stream().flatMap(List::stream).toList()) {
            Matcher mesh = MESH.matcher(text);
            if (!mesh.matches()) {
                return refused(text, "this is no mesh", "write wheel, leaves and module as in 66/12 m1.5");
            }
            meshes.addObject()
                    .put("wheel", Integer.valueOf(mesh.group("wheel")))
                    .put("leaves", Integer.valueOf(mesh.group("leaves")))
                    .put("module", mesh.group("module") + " mm");
        }
        tree.put("meshesAbove", sides.get(0).size());
        tree.put("drumDiameter", rest.group("drum"));
        tree.put("falls", Integer.valueOf(rest.group("falls")));
        tree.put("escapeTeeth", Integer.valueOf(end.group("escape")));
        return TrainReader.read(tree);
    }

    private static Optional<List<List<String>>> sides(String meshes) {
        String[] sides = meshes.split("\\|", -1);
        return sides.length == 2
                ? Optional.of(Stream.of(sides).map(TrainNotation::meshes).toList())
                : Optional.empty();
    }

    private static List<String> meshes(String side) {
        return side.isBlank()
                ? List.of()
                : Arrays.stream(BETWEEN.split(side.strip(), -1))
                        .map(String::strip)
                        .toList();
    }

    private static SheetResult<TrainSheet> refused(String text, String rule, String remedy) {
        String shown = text.isBlank() ? SheetProblem.NOTHING : '"' + text.strip() + '"';
        return new SheetResult.Refused<>(
                List.of(new SheetProblem("", shown, rule, remedy + ", for example " + EXAMPLE)));
    }
}
