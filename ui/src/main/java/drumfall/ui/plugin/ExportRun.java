// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.plugin;

import drumfall.plugin.api.ExportProgress;
import drumfall.plugin.api.Handover;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** An export from start to end, with one exporter or with several: stage, run each, publish all or nothing. */
final class ExportRun {
    private final List<ExportOrder> orders;
    private final ExportPlace place;
    private final boolean apart;
    private final Duration limit;
    private final StagedFolder.Opener opener;
    private final Map<String, Thread> leftBehind = new HashMap<>();

    private ExportRun(
            List<ExportOrder> orders, ExportPlace place, boolean apart, Duration limit, StagedFolder.Opener opener) {
        this.orders = List.copyOf(orders);
        this.place = place;
        this.apart = apart;
        this.limit = limit;
        this.opener = opener;
    }

    /** Exports with one exporter, whose files lie in the place itself. */
    static ExportRun of(ExportOrder order, Path target, Duration limit, StagedFolder.Opener opener) {
        return new ExportRun(List.of(order), new FolderPlace(target, order.id()), false, limit, opener);
    }

    /** Exports with several exporters, each of whose files lie in a folder named after its id. */
    static ExportRun ofAll(List<ExportOrder> orders, Path target, Duration limit, StagedFolder.Opener opener) {
        return new ExportRun(orders, ExportPlace.ofAll(target), true, limit, opener);
    }

    /** Threads of exporters that did not end in time, by the exporter's id. */
    Map<String, Thread> leftBehind() {
        return leftBehind;
    }

    ExportOutcome run(Handover handover, ExportProgress progress) {
        Path staged;
        List<Path> made = place.hidden().missingFolders();
        try {
            staged = place.stage();
        } catch (IOException broken) {
            HiddenEntries.removeEmpty(made);
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
        List<WrittenFile> files = new ArrayList<>();
        for (int i = 0; i < orders.size(); i++) {
            ExportOrder order = orders.get(i);
            String id = order.id();
            ExporterRun run = new ExporterRun(order.exporter(), stage(staged, i, files), limit);
            ExportOutcome outcome = run.run(
                    handover.with(order.values()), apart ? new PartOfExport(progress, i, orders.size(), id) : progress);
            run.leftBehind().ifPresent(thread -> leftBehind.put(id, thread));
            if (!(outcome instanceof ExportOutcome.Written written)) {
                return outcome;
            }
            files.addAll(written.files());
        }
        files.sort(Comparator.comparing(WrittenFile::name));
        return publish(staged, files);
    }

    private ExporterRun.Stage stage(Path staged, int index, List<WrittenFile> files) {
        Set<String> before = new HashSet<>();
        files.forEach(file -> before.add(file.name()));
        List<Path> watched = new ArrayList<>(List.of(place.place()));
        orders.subList(0, index).forEach(earlier -> watched.add(staged.resolve(earlier.id())));
        String folder = apart ? orders.get(index).id() : "";
        return new ExporterRun.Stage(
                staged, folder, place.place(), before, opener, () -> Surroundings.of(place.target(), watched));
    }

    private ExportOutcome publish(Path staged, List<WrittenFile> files) throws IOException {
        Optional<PluginFault> inUse = inUse();
        if (inUse.isPresent()) {
            return new ExportOutcome.Failed(inUse.get());
        }
        FileList.write(
                staged,
                files,
                orders.stream().flatMap(order -> order.lines().stream()).toList());
        place.publish(staged, files);
        return new ExportOutcome.Written(place.place(), files);
    }

    private Optional<PluginFault> inUse() throws IOException {
        return place.foreignFile().map(file -> PluginFault.of(FaultKind.TARGET_IN_USE, names(), file));
    }

    private ExportOutcome unwritable(IOException broken) {
        return new ExportOutcome.Failed(
                PluginFault.of(FaultKind.TARGET_UNWRITABLE, names(), place.target(), IoReason.of(broken)));
    }

    private String names() {
        return apart
                ? FaultText.word("exporters.all")
                : orders.get(0).exporter().jar() + " (" + orders.get(0).id() + ")";
    }
}
