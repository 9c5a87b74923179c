package drumfall.solver.bench.peers;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** MiniZinc with Gecode, point by point as with CP-SAT, if both are installed; every point starts the program anew. */
final class GecodePeer {
    private GecodePeer() {}

    /** Whether the program can be started. */
    static boolean installed() {
        try {
            Process process =
                    new ProcessBuilder("minizinc", "--solvers").redirectErrorStream(true).start();
            String told = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            return process.waitFor() == 0 && told.contains("Gecode");
        } catch (IOException absent) {
            return false;
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    /**
     * The front, unless the time is over.
     *
     * @param table the pairs
     * @param seconds the time, s
     */
    static Optional<Set<List<Integer>>> front(PairTable table, double seconds)
            throws IOException, InterruptedException {
        long start = System.nanoTime();
        Path model = Files.createTempFile("pairs", ".mzn");
        StringBuilder text = new StringBuilder(model(table));
        Set<List<Integer>> front = new HashSet<>();
        try {
            while (true) {
                Files.writeString(model, text);
                String answer = answer(model, seconds - (System.nanoTime() - start) / 1e9);
                if (answer.contains("UNSATISFIABLE")) {
                    return Optional.of(front);
                }
                if (!answer.contains("==========")) {
                    return Optional.empty();
                }
                List<Integer> point = last(answer);
                front.add(point);
                text.append(IntStream.range(0, point.size())
                        .mapToObj(k -> "c" + k + " < " + point.get(k))
                        .collect(Collectors.joining(" \\/ ", "constraint ", ";\n")));
            }
        } finally {
            Files.delete(model);
        }
    }

    private static String answer(Path model, double seconds) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(
                        "minizinc",
                        "--solver",
                        "gecode",
                        "-p",
                        "2",
                        "--time-limit",
                        Long.toString(Math.max(1, Math.round(seconds * 1000))),
                        model.toString())
                .redirectErrorStream(true)
                .start();
        String answer = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        process.waitFor(1, TimeUnit.MINUTES);
        return answer;
    }

    private static List<Integer> last(String answer) {
        return Arrays.stream(answer.lines()
                        .filter(line -> line.startsWith("point "))
                        .reduce((first, second) -> second)
                        .orElseThrow()
                        .substring("point ".length())
                        .split(" ", -1))
                .map(Integer::valueOf)
                .toList();
    }

    private static String model(PairTable table) {
        int columns = PairTable.CELLS + table.objectives();
        StringBuilder text = new StringBuilder("include \"table.mzn\";\n");
        for (int column = 0; column < columns; column++) {
            int at = column;
            int least = table.rows().stream().mapToInt(row -> row[at]).min().orElse(0);
            int most = table.rows().stream().mapToInt(row -> row[at]).max().orElse(0);
            text.append("var %d..%d: %s;\n".formatted(least, most, name(column)));
        }
        text.append(IntStream.range(0, columns)
                .mapToObj(GecodePeer::name)
                .collect(Collectors.joining(", ", "constraint table([", "], [")));
        for (int[] row : table.rows()) {
            text.append("|").append(Arrays.stream(row).mapToObj(Integer::toString).collect(Collectors.joining(",")));
        }
        text.append("|]);\n");
        List<String> cells = IntStream.range(0, table.objectives())
                .mapToObj(k -> "c" + k)
                .toList();
        text.append("solve minimize ").append(String.join(" + ", cells)).append(";\n");
        text.append("output [\"point ")
                .append(cells.stream().map(cell -> "\\(" + cell + ")").collect(Collectors.joining(" ")))
                .append("\\n\"];\n");
        return text.toString();
    }

    private static String name(int column) {
        return column < PairTable.CELLS ? "half" + column : "c" + (column - PairTable.CELLS);
    }
}
