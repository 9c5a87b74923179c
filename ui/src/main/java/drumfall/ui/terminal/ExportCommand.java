// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import drumfall.plugin.api.ExportProgress;
import drumfall.plugin.api.Handover;
import drumfall.solver.brief.Brief;
import drumfall.solver.quantity.UnitSystem;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.rating.placing.TrainPlacing;
import drumfall.solver.search.SearchOutcome;
import drumfall.ui.plugin.ExportOutcome;
import drumfall.ui.plugin.FaultKind;
import drumfall.ui.plugin.PluginFault;
import drumfall.ui.plugin.PluginHost;
import drumfall.ui.plugin.SettingTexts;
import drumfall.ui.wording.FigureWording;
import drumfall.ui.wording.ProgramVersion;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
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
    private SettingChoice settings;

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
        SettingTexts texts = settings.texts();
        Brief brief = holds.applyTo(briefChoice.brief(), place);
        try (PluginHost host = PluginHost.load(place.pluginFolders())) {
            List<String> ids = exporters.all ? host.everyId() : List.of(exporters.id);
            // What is set is looked at before a search that may take long.
            Optional<PluginFault> fault = texts.equals(SettingTexts.NONE) ? Optional.empty() : host.fault(ids, texts);
            if (fault.isPresent()) {
                place.err().println(fault.get().sentence());
                return code(fault.get()).number();
            }
            return rated(brief, rating -> export(host, new Task(ids, texts, target), brief, rating))
                    .number();
        }
    }

    /**
     * What is to be done with the train.
     *
     * @param ids exporters
     * @param settings what is set about them
     * @param target where to
     */
    private record Task(List<String> ids, SettingTexts settings, Path target) {}

    /** An exporter that is not there is told as a failed export, whatever else is typed wrong as bad input. */
    private static ExitCode code(PluginFault fault) {
        return fault.kind() == FaultKind.UNKNOWN_EXPORTER ? ExitCode.EXPORT_FAILED : ExitCode.BAD_INPUT;
    }

    private ExitCode rated(Brief brief, Function<Rating, ExitCode> export) {
        if (trainFile != null) {
            return export.apply(
                    new TrainRater(brief).rate(SheetTexts.train(trainFile).train()));
        }
        SearchOutcome outcome = SolveCommand.search(brief, stop, place, UnitSystem.METRIC);
        return outcome.fold(
                proved -> export.apply(chosen(proved)),
                stopped -> refused("export.stopped", ExitCode.STOPPED),
                none -> refused("export.none", ExitCode.NO_TRAIN));
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

    private ExitCode export(PluginHost host, Task task, Brief brief, Rating rating) {
        long missed = rating.missed().count();
        if (missed > 0) {
            place.err().println(Phrases.phrase("export.missed", missed));
        }
        Handover handover = new Handover(
                brief, rating, TrainPlacing.layout(brief, rating.train(), place.interrupted()), ProgramVersion.text());
        ExportProgress progress = until(place.interrupted());
        return exporters.all
                ? whole(
                        host,
                        told(
                                host.exportTogether(task.ids(), handover, task.settings(), task.target(), progress),
                                rating))
                : told(host.export(exporters.id, handover, task.settings(), task.target(), progress), rating);
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
