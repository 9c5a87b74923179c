// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view;

import drumfall.solver.brief.Locks;
import drumfall.solver.quantity.UnitSystem;
import drumfall.solver.rating.Rating;
import drumfall.solver.train.Train;
import drumfall.ui.presenter.FileDesk;
import drumfall.ui.presenter.Front;
import drumfall.ui.presenter.Workspace;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Everything the menus and keys can do, each with the predicate that says whether it can be done. */
final class Commands {
    private final Workspace workspace;
    private final FileDesk files;
    private final FileChoice choice;
    private final Map<String, Command> all = new LinkedHashMap<>();

    Commands(Workspace workspace, FileDesk files, FileChoice choice) {
        this.workspace = workspace;
        this.files = files;
        this.choice = choice;
        addFileCommands();
        addEditCommands();
        addTrainCommands();
    }

    private void addFileCommands() {
        add(new Command("open", () -> choice.toOpen().ifPresent(files::open)));
        add(new Command("save", this::save));
        add(new Command("saveas", this::saveAs));
    }

    private void save() {
        if (files.file().isPresent()) {
            files.save();
        } else {
            saveAs();
        }
    }

    private void saveAs() {
        choice.toSave(proposedName()).ifPresent(files::saveAs);
    }

    /** The design's file or name as the beginning of a file name. */
    String proposedName() {
        return files.file()
                .map(Path::getFileName)
                .map(name -> name.toString().replaceFirst("\\.drumfall$", ""))
                .orElse(workspace
                        .design()
                        .name()
                        .replaceAll("[^\\p{L}\\p{N} -]", "")
                        .strip());
    }

    private void addEditCommands() {
        add(new Command("undo", workspace::undo)
                .when(() -> workspace.undoName().isPresent())
                .naming(workspace::undoName));
        add(new Command("redo", workspace::redo)
                .when(() -> workspace.redoName().isPresent())
                .naming(workspace::redoName));
        add(new Command("release", workspace::releaseAll)
                .when(() -> !workspace.draft().locks().equals(Locks.NONE)));
    }

    private void addTrainCommands() {
        add(new Command("solve", workspace::solve)
                .when(() -> workspace.draft().brief().isPresent()
                        && !workspace.search().running()));
        add(new Command("growing", workspace::showGrowing)
                .when(() -> workspace.frontIsEarlier() && workspace.search().found() > 0));
        add(new Command("next", () -> chooseNeighbour(1)).when(this::anyTrain));
        add(new Command("previous", () -> chooseNeighbour(-1)).when(this::anyTrain));
        add(new Command("accept", workspace::acceptTrial)
                .when(() -> workspace.trial().isPresent()));
        add(new Command("drop", workspace::dropTrial)
                .when(() -> workspace.trial().isPresent()));
        add(new Command("inches", this::switchUnits).on(() -> workspace.units() == UnitSystem.IMPERIAL));
    }

    private void switchUnits() {
        workspace.setUnits(workspace.units() == UnitSystem.METRIC ? UnitSystem.IMPERIAL : UnitSystem.METRIC);
    }

    private boolean anyTrain() {
        return !trains().isEmpty();
    }

    private List<Train> trains() {
        return workspace.front().map(Front::ratings).orElse(List.of()).stream()
                .map(Rating::train)
                .toList();
    }

    private void chooseNeighbour(int step) {
        List<Train> trains = trains();
        Optional<Train> chosen = workspace.chosen().map(Rating::train);
        int next = chosen.map(trains::indexOf).orElse(-1) + step;
        workspace.choose(trains.get(Math.max(0, Math.min(trains.size() - 1, next))));
    }

    /** Adds a command of the window's own. */
    void add(Command command) {
        all.put(command.key(), command);
        command.refresh();
    }

    Command get(String key) {
        return Optional.ofNullable(all.get(key))
                .orElseThrow(() -> new IllegalArgumentException("There is no command (%s).".formatted(key)));
    }

    /** Looks again which commands can be done. */
    void refresh() {
        all.values().forEach(Command::refresh);
    }
}
