// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.plugin;

import drumfall.plugin.api.ExportProgress;
import drumfall.plugin.api.Handover;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** One exporter let loose on a staged folder: run, then check. */
final class ExporterRun {
    private final LoadedExporter exporter;
    private final Stage stage;
    private final Duration limit;
    private Optional<Thread> leftBehind = Optional.empty();

    /**
     * What an exporter finds.
     *
     * @param staged the hidden folder of the whole export
     * @param folder the exporter's folder in it; empty for the whole folder
     * @param place where the export ends up, for sentences
     * @param before names of the files staged before by other exporters
     * @param opener opens files
     * @param surroundings looks at what the exporter must not touch
     */
    record Stage(
            Path staged,
            String folder,
            Path place,
            Set<String> before,
            StagedFolder.Opener opener,
            Supplier<Surroundings> surroundings) {
        /** The name of an exporter's file in the whole export. */
        private String whole(String name) {
            return folder.isEmpty() ? name : folder + "/" + name;
        }
    }

    ExporterRun(LoadedExporter exporter, Stage stage, Duration limit) {
        this.exporter = exporter;
        this.stage = stage;
        this.limit = limit;
    }

    /** The exporter's thread if it did not end in time. */
    Optional<Thread> leftBehind() {
        return leftBehind;
    }

    /**
     * Runs the exporter.
     *
     * @return {@code Written} with the files' names in the whole export; nothing is in place yet
     */
    ExportOutcome run(Handover handover, ExportProgress progress) throws IOException {
        Path own = Files.createDirectories(stage.staged().resolve(stage.folder()));
        Surroundings before = stage.surroundings().get();
        ShownProgress shown = new ShownProgress(progress);
        StagedFolder folder = new StagedFolder(own, plugin(), stage.opener());
        GuardedCall.Ending<Boolean> ending = call(handover, folder, shown);
        folder.close();
        shown.end();
        leftBehind = thread(ending).filter(Thread::isAlive);
        if (ending instanceof GuardedCall.Ending.Cancelled || progress.cancelled()) {
            return new ExportOutcome.Cancelled();
        }
        Optional<PluginFault> fault =
                endingFault(ending, folder).or(() -> wroteOutside(before)).or(() -> fileFault(folder));
        if (fault.isEmpty()) {
            fault = unknown(folder);
        }
        return fault.isPresent()
                ? new ExportOutcome.Failed(fault.get())
                : new ExportOutcome.Written(own, written(folder));
    }

    private List<WrittenFile> written(StagedFolder folder) {
        return folder.files().stream()
                .map(StagedFile::written)
                .map(file -> new WrittenFile(stage.whole(file.name()), file.size(), file.sha256()))
                .toList();
    }

    private GuardedCall.Ending<Boolean> call(Handover handover, StagedFolder folder, ExportProgress progress) {
        return new GuardedCall("export " + exporter.entry().id(), exporter.loader())
                .run(limit, progress::cancelled, () -> {
                    exporter.exporter().export(handover, folder, progress);
                    return true;
                });
    }

    private static Optional<Thread> thread(GuardedCall.Ending<Boolean> ending) {
        if (ending instanceof GuardedCall.Ending.OutOfTime<Boolean> outOfTime) {
            return Optional.of(outOfTime.thread());
        }
        return ending instanceof GuardedCall.Ending.Cancelled<Boolean> cancelled
                ? Optional.of(cancelled.thread())
                : Optional.empty();
    }

    /** What went wrong in the order of how sure its cause is: time, disk, file names, what was thrown. */
    private Optional<PluginFault> endingFault(GuardedCall.Ending<Boolean> ending, StagedFolder folder) {
        if (ending instanceof GuardedCall.Ending.OutOfTime) {
            return Optional.of(PluginFault.of(FaultKind.HUNG, plugin(), PluginLimits.seconds(limit)));
        }
        return folder.failure()
                .map(broken ->
                        PluginFault.of(FaultKind.TARGET_UNWRITABLE, plugin(), stage.place(), IoReason.of(broken)))
                .or(folder::refusal)
                .or(() -> thrown(ending));
    }

    private Optional<PluginFault> thrown(GuardedCall.Ending<Boolean> ending) {
        if (ending instanceof GuardedCall.Ending.Threw<Boolean> threw) {
            return Optional.of(PluginFault.of(
                            kind(threw.thrown()), plugin(), threw.thrown().summary())
                    .withDetail(threw.thrown().detail()));
        }
        return Optional.empty();
    }

    private static FaultKind kind(ThrownText thrown) {
        if (thrown.refused()) {
            return FaultKind.REFUSED;
        }
        return thrown.linkage() ? FaultKind.LINKAGE : FaultKind.THREW;
    }

    private Optional<PluginFault> wroteOutside(Surroundings before) {
        return before.firstChange(stage.surroundings().get())
                .map(path -> PluginFault.of(FaultKind.WROTE_OUTSIDE, plugin(), path));
    }

    private Optional<PluginFault> fileFault(StagedFolder folder) {
        if (folder.files().isEmpty()) {
            return Optional.of(PluginFault.of(FaultKind.NOTHING_WRITTEN, plugin()));
        }
        return folder.files().stream()
                .filter(file -> !file.isClosed())
                .findFirst()
                .map(file -> PluginFault.of(FaultKind.LEFT_OPEN, plugin(), file.name()));
    }

    private Optional<PluginFault> unknown(StagedFolder folder) throws IOException {
        Set<String> names = Stream.concat(
                        stage.before().stream(),
                        folder.files().stream().map(StagedFile::name).map(stage::whole))
                .collect(Collectors.toSet());
        return FileList.firstUnknown(stage.staged(), names)
                .map(path -> PluginFault.of(FaultKind.WROTE_OUTSIDE, plugin(), path));
    }

    private String plugin() {
        return exporter.jar() + " (" + exporter.entry().id() + ")";
    }
}
