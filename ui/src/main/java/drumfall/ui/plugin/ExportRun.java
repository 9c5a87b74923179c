// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.plugin;

import drumfall.plugin.api.ExportProgress;
import drumfall.plugin.api.Handover;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** One export from start to end: stage, run, check, publish. */
final class ExportRun {
    private final LoadedExporter exporter;
    private final ExportPlace place;
    private final Duration limit;
    private final StagedFolder.Opener opener;
    private Optional<Thread> leftBehind = Optional.empty();

    ExportRun(LoadedExporter exporter, Path target, Duration limit, StagedFolder.Opener opener) {
        this.exporter = exporter;
        this.place = new ExportPlace(target, exporter.entry().id());
        this.limit = limit;
        this.opener = opener;
    }

    /** The exporter's thread if it did not end in time. */
    Optional<Thread> leftBehind() {
        return leftBehind;
    }

    ExportOutcome run(Handover handover, ExportProgress progress) {
        Path staged;
        List<Path> made = place.missingFolders();
        try {
            staged = place.stage();
        } catch (IOException broken) {
            place.removeEmpty(made);
            return unwritable(broken);
        }
        try {
            Optional<PluginFault> inUse = inUse();
            return inUse.isPresent() ? new ExportOutcome.Failed(inUse.get()) : into(staged, handover, progress);
        } catch (IOException broken) {
            return unwritable(broken);
        } finally {
            place.tidy(staged, made);
        }
    }

    private ExportOutcome into(Path staged, Handover handover, ExportProgress progress) throws IOException {
        Surroundings before = surroundings();
        ShownProgress shown = new ShownProgress(progress);
        StagedFolder folder = new StagedFolder(staged, plugin(), opener);
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
            fault = unknownIn(staged, folder).or(() -> Optional.empty());
        }
        if (fault.isPresent()) {
            return new ExportOutcome.Failed(fault.get());
        }
        return publish(staged, folder.files().stream().map(StagedFile::written).toList());
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

    private ExportOutcome publish(Path staged, List<WrittenFile> files) throws IOException {
        Optional<PluginFault> inUse = inUse();
        if (inUse.isPresent()) {
            return new ExportOutcome.Failed(inUse.get());
        }
        place.publish(staged, files);
        return new ExportOutcome.Written(place.place(), files);
    }

    private Optional<PluginFault> inUse() throws IOException {
        return place.foreignFile().map(file -> PluginFault.of(FaultKind.TARGET_IN_USE, plugin(), file));
    }

    /** What went wrong in the order of how sure its cause is: time, disk, file names, what was thrown. */
    private Optional<PluginFault> endingFault(GuardedCall.Ending<Boolean> ending, StagedFolder folder) {
        if (ending instanceof GuardedCall.Ending.OutOfTime) {
            return Optional.of(PluginFault.of(FaultKind.HUNG, plugin(), PluginLimits.seconds(limit)));
        }
        return folder.failure()
                .map(broken ->
                        PluginFault.of(FaultKind.TARGET_UNWRITABLE, plugin(), place.place(), IoReason.of(broken)))
                .or(folder::refusal)
                .or(() -> thrown(ending));
    }

    private Optional<PluginFault> thrown(GuardedCall.Ending<Boolean> ending) {
        if (ending instanceof GuardedCall.Ending.Threw<Boolean> threw) {
            FaultKind kind = threw.thrown().linkage() ? FaultKind.LINKAGE : FaultKind.THREW;
            return Optional.of(PluginFault.of(kind, plugin(), threw.thrown().summary())
                    .withDetail(threw.thrown().detail()));
        }
        return Optional.empty();
    }

    private Optional<PluginFault> wroteOutside(Surroundings before) {
        return before.firstChange(surroundings()).map(path -> PluginFault.of(FaultKind.WROTE_OUTSIDE, plugin(), path));
    }

    private Surroundings surroundings() {
        return Surroundings.of(place.target(), place.place());
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

    private Optional<PluginFault> unknownIn(Path staged, StagedFolder folder) throws IOException {
        return FileList.firstUnknown(
                        staged, folder.files().stream().map(StagedFile::name).collect(Collectors.toSet()))
                .map(path -> PluginFault.of(FaultKind.WROTE_OUTSIDE, plugin(), path));
    }

    private ExportOutcome unwritable(IOException broken) {
        return new ExportOutcome.Failed(
                PluginFault.of(FaultKind.TARGET_UNWRITABLE, plugin(), place.target(), IoReason.of(broken)));
    }

    private String plugin() {
        return exporter.jar() + " (" + exporter.entry().id() + ")";
    }
}
