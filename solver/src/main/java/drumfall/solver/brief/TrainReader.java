// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.brief;

import com.fasterxml.jackson.databind.JsonNode;
import drumfall.solver.sheet.SheetFormat;
import drumfall.solver.sheet.SheetProblem;
import drumfall.solver.sheet.SheetResult;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Reads trains written down to be rated; whatever is wrong comes back as problems, and nothing is thrown. */
public final class TrainReader {
    /** The file format of a train. */
    public static final SheetFormat<TrainSheet> FORMAT = new SheetFormat<>(TrainSheet.class, "drumfall-train", 1);

    private TrainReader() {}

    /**
     * The train that a text stands for.
     *
     * @param text JSON
     */
    public static SheetResult<TrainSheet> read(String text) {
        return FORMAT.read(text).checkedBy(TrainReader::problems);
    }

    /**
     * The train that a file holds; a file that cannot be read is a problem too.
     *
     * @param file JSON in UTF-8
     */
    public static SheetResult<TrainSheet> read(Path file) {
        return FORMAT.read(file).checkedBy(TrainReader::problems);
    }

    /**
     * The train that a tree stands for.
     *
     * @param tree JSON with its two opening fields; it is not changed
     */
    public static SheetResult<TrainSheet> read(JsonNode tree) {
        return FORMAT.read(tree).checkedBy(TrainReader::problems);
    }

    /**
     * The text of a train, ending in a line feed; {@link #read(String)} reads an equal train back.
     *
     * @param sheet the train
     */
    public static String write(TrainSheet sheet) {
        return FORMAT.write(sheet);
    }

    private static List<SheetProblem> problems(TrainSheet sheet) {
        return Stream.concat(modulesAreWholeNanometres(sheet), aMeshIsLeftBelow(sheet))
                .toList();
    }

    static Stream<SheetProblem> modulesAreWholeNanometres(TrainSheet sheet) {
        return IntStream.range(0, sheet.meshes().size())
                .boxed()
                .flatMap(index -> PartRules.wholeNanometres(
                        "/meshes/%d/module".formatted(index),
                        sheet.meshes().get(index).module()));
    }

    static Stream<SheetProblem> aMeshIsLeftBelow(TrainSheet sheet) {
        int meshes = sheet.meshes().size();
        return Clash.unless(
                sheet.meshesAbove() < meshes,
                "/meshesAbove",
                String.valueOf(sheet.meshesAbove()),
                "at least one of the train's %d meshes must lie below the centre".formatted(meshes),
                "write at most %d or add the missing meshes".formatted(meshes - 1));
    }
}
