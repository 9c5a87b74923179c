// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.BriefReader;
import drumfall.solver.brief.BundledBriefs;
import drumfall.solver.brief.TrainReader;
import drumfall.solver.brief.TrainSheet;
import drumfall.solver.sheet.SheetProblem;
import drumfall.solver.sheet.SheetResult;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;

/** Reads the files that commands are given; whatever is wrong with one leaves as one sentence for each problem. */
final class SheetTexts {
    private SheetTexts() {}

    static Brief brief(String file) {
        return accepted(file, BriefReader::read);
    }

    static TrainSheet train(String file) {
        return accepted(file, TrainReader::read);
    }

    static Brief bundled(String name) {
        return BundledBriefs.load(name).orElseThrow(() -> unknown(name));
    }

    static RefusedInput unknown(String name) {
        return RefusedInput.of("bundled", name, String.join(", ", BundledBriefs.names()));
    }

    private static <R> R accepted(String file, Function<Path, SheetResult<R>> reader) {
        return accepted(file, reader.apply(path(file)));
    }

    /** The record, or a refusal that names where each problem stands. */
    static <R> R accepted(String where, SheetResult<R> result) {
        return result.fold(record -> record, problems -> {
            throw new RefusedInput(sentences(where, problems));
        });
    }

    static Path path(String file) {
        try {
            return Path.of(file);
        } catch (InvalidPathException invalid) {
            throw RefusedInput.of("path", file);
        }
    }

    private static List<String> sentences(String file, List<SheetProblem> problems) {
        return problems.stream()
                .map(problem -> Phrases.phrase("problem", file, problem.sentence()))
                .toList();
    }
}
