// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import drumfall.plugin.api.ExportProgress;
import drumfall.plugin.api.Handover;
import drumfall.solver.brief.Brief;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.rating.placing.TrainPlacing;
import drumfall.solver.search.SearchOutcome;
import drumfall.ui.plugin.ExportOutcome;
import drumfall.ui.plugin.PluginFault;
import drumfall.ui.plugin.PluginHost;
import drumfall.ui.wording.FigureWording;
import drumfall.ui.wording.ProgramVersion;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.BooleanSupplier;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Hands a train to an exporter, or to all of them. */
@Command(name = "export", mixinStandardHelpOptions = true, resourceBundle = Phrases.BUNDLE)
final class ExportCommand implements Callable<Integer> {
    private final TerminalPlace place;

    @ArgGroup
    private Exporters exporters;

    @Option(names = "--to", required = true, paramLabel = "FOLDER", descriptionKey = "option.to")
    private String folder;

    @Mixin
    private BriefChoice briefChoice;

    @Parameters(index = "1", arity = "0..1", paramLabel = "TRAIN.json", descriptionKey = "option.export.train")
    private String trainFile;

    @Option(names = "--option", paramLabel = "NUMBER", converter = WholeNumber.class, descriptionKey = "option.option")
    private Integer option;

    @Mixin
    private HoldChoice holds;

    @Mixin
    private StopChoice stop;

    /** One exporter or all of them. */
    static final class Exporters {
        @Option(names = "--with", paramLabel = "ID", descriptionKey = "option.with")
        private String id;

        @Option(names = "--all", descriptionKey = "option.all")
        private boolean all;
    }

    ExportCommand(TerminalPlace place) {
        this.place = place;
    }

    @Override
    public Integer call() {
        if (exporters == null) {
            throw RefusedInput.of("no-exporter");
        }
        if (trainFile != null && option != null) {
            throw RefusedInput.of("train-and-option", trainFile, option);
        }
        Path target = SheetTexts.path(folder);
        Brief brief = holds.applyTo(briefChoice.brief());
        if (trainFile != null) {
            return export(
                            brief,
                            new TrainRater(brief)
                                    .rate(SheetTexts.train(trainFile).train()),
                            target)
                    .number();
        }
        SearchOutcome outcome = SolveCommand.search(brief, stop, place);
        return outcome.fold(
                        proved -> export(brief, chosen(proved), target),
                        stopped -> refused("export.stopped", ExitCode.STOPPED),
                        none -> refused("export.none", ExitCode.NO_TRAIN))
                .number();
    }

    private ExitCode refused(String key, ExitCode code) {
        place.err().println(Phrases.phrase(key));
        return code;
    }

    private Rating chosen(SearchOutcome.Proved proved) {
        int number = option == null ? 1 : option;
        if (number > proved.front().size()) {
            throw RefusedInput.of("option", number, proved.front().size());
        }
        return proved.front().get(number - 1);
    }

    private ExitCode export(Brief brief, Rating rating, Path target) {
        long missed = rating.missed().count();
        if (missed > 0) {
            place.err().println(Phrases.phrase("export.missed", missed));
        }
        try (PluginHost host = PluginHost.load(place.pluginFolders())) {
            Handover handover = new Handover(
                    brief,
                    rating,
                    TrainPlacing.layout(brief, rating.train(), place.interrupted()),
                    ProgramVersion.text());
            ExportProgress progress = until(place.interrupted());
            return exporters.all
                    ? whole(host, told(host.exportAll(handover, target, progress), rating))
                    : told(host.export(exporters.id, handover, target, progress), rating);
        }
    }

    /** All there is has not been exported if a plugin could not be used. */
    private ExitCode whole(PluginHost host, ExitCode code) {
        List<PluginFault> faults = host.report().stream()
                .flatMap(plugin -> plugin.faults().stream())
                .toList();
        faults.forEach(fault -> place.err().println(Phrases.phrase("plugins.fault", fault.sentence())));
        return faults.isEmpty() || code != ExitCode.DONE ? code : ExitCode.EXPORT_FAILED;
    }

    private ExitCode told(ExportOutcome outcome, Rating rating) {
        if (outcome instanceof ExportOutcome.Written written) {
            place.out().println(Phrases.phrase("export.done", FigureWording.train(rating.train()), written.folder()));
            written.files().forEach(file -> place.out().println("  " + file.name()));
            return ExitCode.DONE;
        }
        if (outcome instanceof ExportOutcome.Failed failed) {
            place.err().println(failed.fault().sentence());
            return ExitCode.EXPORT_FAILED;
        }
        return refused("export.cancelled", ExitCode.STOPPED);
    }

    private static ExportProgress until(BooleanSupplier interrupted) {
        return new ExportProgress() {
            @Override
            public void at(double share, String doing) {}

            @Override
            public boolean cancelled() {
                return interrupted.getAsBoolean();
            }
        };
    }
}
