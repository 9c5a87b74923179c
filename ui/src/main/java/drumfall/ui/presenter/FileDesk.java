// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.solver.brief.Brief;
import drumfall.ui.design.Design;
import drumfall.ui.design.DesignFault;
import drumfall.ui.design.DesignFile;
import drumfall.ui.design.DesignReading;
import drumfall.ui.design.FileHold;
import drumfall.ui.design.RecoveryFolder;
import drumfall.ui.design.RecoveryFolder.LeftBehind;
import drumfall.ui.design.Unsaved;
import drumfall.ui.work.RecoveryKeeper;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;

/**
 * The design's file: new, open, save, save as, and unsaved work that is never lost.
 *
 * <p>Nothing asks whether one is sure. Unsaved work that another design takes the place of is set aside in the recovery
 * folder, from where it can be brought back. Files are read and written on the disk's executor; everything else happens on
 * the event thread.
 */
public final class FileDesk implements AutoCloseable {
    private final Workspace workspace;
    private final Executor disk;
    private final Executor events;
    private final Settings settings;
    private final RecoveryFolder recovery;
    private RecoveryFolder.Slot slot;
    private RecoveryKeeper keeper;
    private Optional<Path> file = Optional.empty();
    private FileHold hold = FileHold.none();
    private Optional<Design> saved;
    private volatile Optional<Unsaved> unsaved = Optional.empty();

    /**
     * A desk for a workspace's design, which counts as saved.
     *
     * @param workspace the workspace
     * @param disk runs what reads and writes files
     * @param events runs what comes of it on the workspace's thread
     * @param settings remembers files
     * @param recovery keeps unsaved work
     */
    public FileDesk(Workspace workspace, Executor disk, Executor events, Settings settings, RecoveryFolder recovery) {
        this.workspace = workspace;
        this.disk = disk;
        this.events = events;
        this.settings = settings;
        this.recovery = recovery;
        this.saved = Optional.of(workspace.design());
        this.slot = recovery.slot();
        this.keeper = newKeeper();
        workspace.listen(aspect -> {
            if (aspect == Aspect.DESIGN) {
                followDesign();
            }
        });
    }

    private RecoveryKeeper newKeeper() {
        RecoveryKeeper made = new RecoveryKeeper(
                slot,
                () -> unsaved,
                fault -> events.execute(() -> workspace.setNews(News.trouble(Faults.recovery(fault)))));
        made.start();
        return made;
    }

    /** A choice the program made for the maker is no work of the maker's. */
    private void followDesign() {
        boolean ours = workspace.undoName().isEmpty()
                && saved.filter(design -> design.chosen().isEmpty())
                        .filter(design -> design.draft().equals(workspace.draft()))
                        .isPresent();
        if (ours) {
            saved = Optional.of(workspace.design());
        }
        unsaved = changed() ? Optional.of(new Unsaved(workspace.design(), file)) : Optional.empty();
    }

    /** The file the design was opened from or saved to. */
    public Optional<Path> file() {
        return file;
    }

    /** Whether the design on the screen is another than the one in its file. */
    public boolean changed() {
        return !Optional.of(workspace.design()).equals(saved);
    }

    /** Files used last, the newest first. */
    public List<Path> recent() {
        return settings.recent();
    }

    /** Begins a new design. */
    public void begin(Brief brief) {
        begin(Design.of(brief));
    }

    private void begin(Design design) {
        setAside();
        show(design, Optional.empty(), FileHold.none());
    }

    /**
     * Opens a design's file, or begins a new design with the brief of a file.
     *
     * @param chosen the file
     */
    public void open(Path chosen) {
        if (file.equals(Optional.of(chosen.toAbsolutePath().normalize())) && !changed()) {
            return;
        }
        disk.execute(() -> {
            DesignReading reading = DesignFile.open(chosen);
            events.execute(() -> opened(chosen, reading));
        });
    }

    private void opened(Path chosen, DesignReading reading) {
        reading.fold(
                (design, own) -> {
                    if (own) {
                        take(chosen, design);
                    } else {
                        begin(design);
                        workspace.setNews(News.told(Texts.of("news.begun", chosen.getFileName())));
                    }
                    return null;
                },
                fault -> {
                    workspace.setNews(News.trouble(Faults.sentence(fault)));
                    return null;
                });
    }

    private void take(Path chosen, Design design) {
        boolean own = file.equals(Optional.of(chosen.toAbsolutePath().normalize()));
        Optional<FileHold> gained = own ? Optional.of(hold) : FileHold.on(chosen);
        if (gained.isEmpty()) {
            refuse(DesignFault.Kind.OPEN_ELSEWHERE, chosen);
            return;
        }
        setAside();
        show(design, Optional.of(chosen.toAbsolutePath().normalize()), gained.get());
        settings.used(chosen);
    }

    private void refuse(DesignFault.Kind kind, Path chosen) {
        workspace.setNews(News.trouble(Faults.sentence(DesignFault.of(kind, String.valueOf(chosen.getFileName())))));
    }

    private void show(Design design, Optional<Path> from, FileHold held) {
        if (held != hold) {
            hold.close();
        }
        hold = held;
        file = from;
        saved = Optional.of(design);
        workspace.open(design);
        unsaved = Optional.empty();
    }

    /** Saves to the design's file; nothing happens if it has none. */
    public void save() {
        file.ifPresent(this::write);
    }

    /**
     * Saves to another file, which becomes the design's.
     *
     * @param chosen the file; the usual ending is added
     */
    public void saveAs(Path chosen) {
        Path target = DesignFile.withEnding(chosen).toAbsolutePath().normalize();
        if (file.equals(Optional.of(target))) {
            save();
            return;
        }
        Optional<FileHold> gained = FileHold.on(target);
        if (gained.isEmpty()) {
            refuse(DesignFault.Kind.OPEN_ELSEWHERE, target);
            return;
        }
        write(
                target,
                () -> {
                    hold.close();
                    hold = gained.get();
                    file = Optional.of(target);
                },
                gained.get()::close);
    }

    private void write(Path target) {
        write(target, () -> {}, () -> {});
    }

    private void write(Path target, Runnable written, Runnable failed) {
        Design design = workspace.design();
        disk.execute(() -> {
            Optional<DesignFault> fault = DesignFile.save(target, design);
            events.execute(() -> {
                (fault.isPresent() ? failed : written).run();
                wrote(target, design, fault);
            });
        });
    }

    private void wrote(Path target, Design design, Optional<DesignFault> fault) {
        if (fault.isPresent()) {
            workspace.setNews(News.trouble(Faults.sentence(fault.get())));
            return;
        }
        saved = Optional.of(design);
        settings.used(target);
        workspace.sealEdit();
        workspace.setNews(News.told(Texts.of("news.saved", target.getFileName())));
        workspace.designSaved();
    }

    /** Unsaved work that was left behind or set aside, the newest first. */
    public List<LeftBehind> leftBehind() {
        return recovery.leftBehind();
    }

    /**
     * Brings unsaved work back; it is still unsaved then.
     *
     * @param work the work
     */
    public void bringBack(LeftBehind work) {
        setAside();
        Optional<Path> origin = work.unsaved().origin();
        Optional<FileHold> gained = origin.flatMap(FileHold::on);
        show(work.unsaved().design(), gained.flatMap(held -> origin), gained.orElseGet(FileHold::none));
        saved = Optional.empty();
        workspace.designSaved();
        keeper.keep();
        recovery.discard(work);
    }

    /** Forgets unsaved work for good. */
    public void forget(LeftBehind work) {
        recovery.discard(work);
    }

    /** Unsaved work goes to the recovery folder and stays there. */
    private void setAside() {
        if (changed()) {
            leave();
            slot = recovery.slot();
            keeper = newKeeper();
        }
    }

    private void leave() {
        unsaved = Optional.of(new Unsaved(workspace.design(), file));
        keeper.leave();
    }

    /** Ends in order: unsaved work stays in the recovery folder for the next time. */
    @Override
    public void close() {
        if (changed()) {
            leave();
        } else {
            keeper.close();
        }
        hold.close();
    }
}
