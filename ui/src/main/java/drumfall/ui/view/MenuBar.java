// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view;

import drumfall.solver.brief.BundledBriefs;
import drumfall.ui.design.RecoveryFolder.LeftBehind;
import drumfall.ui.presenter.Exports;
import drumfall.ui.presenter.FileDesk;
import drumfall.ui.presenter.Texts;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.JCheckBoxMenuItem;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;
import javax.swing.KeyStroke;
import javax.swing.event.MenuEvent;
import javax.swing.event.MenuListener;

/** The menus; what changes from moment to moment is looked up when a menu is opened. */
final class MenuBar extends JMenuBar {
    private final transient Commands commands;
    private final transient FileDesk files;
    private final transient Exports exports;
    private final transient FileChoice choice;

    MenuBar(Commands commands, FileDesk files, Exports exports, FileChoice choice) {
        this.commands = commands;
        this.files = files;
        this.exports = exports;
        this.choice = choice;
        add(fileMenu());
        add(menu("edit", "undo", "redo", "", "release"));
        add(menu(
                "train",
                "solve",
                "stop",
                "growing",
                "explain",
                "",
                "next",
                "previous",
                "",
                "accept",
                "drop",
                "",
                "keepholes"));
        add(viewMenu());
        add(menu("help", "cautions", "plugins", "", "about"));
    }

    private JMenu fileMenu() {
        JMenu menu = menu("file");
        menu.add(filled("new", this::fillNew));
        menu.add(item("open"));
        menu.add(filled("recent", this::fillRecent));
        menu.add(filled("back", this::fillBack));
        menu.addSeparator();
        menu.add(item("save"));
        menu.add(item("saveas"));
        menu.add(item("exportpage"));
        menu.add(filled("export", this::fillExport));
        menu.addSeparator();
        menu.add(item("quit"));
        return menu;
    }

    private JMenu viewMenu() {
        JMenu menu = menu("view", "dark", "inches");
        JMenu zoom = menu("zoom", "larger", "smaller", "usual");
        menu.add(zoom);
        menu.addSeparator();
        menu.add(item("elevation"));
        menu.add(item("section"));
        menu.add(item("meshsheet"));
        menu.add(item("powersheet"));
        menu.add(item("wheels"));
        menu.add(item("easingsheet"));
        menu.add(item("turnmesh"));
        menu.addSeparator();
        menu.add(item("nextplace"));
        menu.add(item("previousplace"));
        return menu;
    }

    private JMenu menu(String key, String... items) {
        JMenu menu = new JMenu(Texts.of("menu." + key));
        menu.setName("menu." + key);
        menu.setMnemonic(
                KeyStroke.getKeyStroke(Texts.of("menu." + key + ".mnemonic")).getKeyCode());
        for (String item : items) {
            if (item.isEmpty()) {
                menu.addSeparator();
            } else {
                menu.add(item(item));
            }
        }
        menu.addMenuListener(new Opening(commands::refresh));
        return menu;
    }

    private JMenuItem item(String key) {
        Command command = commands.get(key);
        JMenuItem item = command.isSwitch() ? new JCheckBoxMenuItem(command) : new JMenuItem(command);
        item.setName("command." + key);
        return item;
    }

    private JMenu filled(String key, Consumer<JMenu> fill) {
        JMenu menu = menu(key);
        fill.accept(menu);
        menu.addMenuListener(new Opening(() -> {
            menu.removeAll();
            fill.accept(menu);
        }));
        return menu;
    }

    private void fillNew(JMenu menu) {
        for (String name : BundledBriefs.names()) {
            JMenuItem item = new JMenuItem(Texts.of("brief." + name));
            item.setName("new." + name);
            item.addActionListener(event -> BundledBriefs.load(name).ifPresent(files::begin));
            menu.add(item);
        }
    }

    private void fillRecent(JMenu menu) {
        files.recent().forEach(file -> {
            JMenuItem item = new JMenuItem(file.toString());
            item.addActionListener(event -> files.open(file));
            menu.add(item);
        });
        orNothing(menu, "menu.recent.none");
    }

    private void fillBack(JMenu menu) {
        List<LeftBehind> works = files.leftBehind();
        works.forEach(work -> {
            JMenuItem item = new JMenuItem(work.unsaved().design().name());
            item.addActionListener(event -> files.bringBack(work));
            menu.add(item);
        });
        orNothing(menu, "menu.back.none");
    }

    private void fillExport(JMenu menu) {
        exports.exporters().forEach(exporter -> {
            JMenuItem item = new JMenuItem(exporter.title());
            item.setName("export." + exporter.id());
            item.addActionListener(event ->
                    choice.exportFolder(exporter.title()).ifPresent(folder -> exports.export(exporter, folder)));
            menu.add(item);
        });
        if (menu.getItemCount() > 0) {
            menu.addSeparator();
            menu.add(all("all", () -> choice.exportFolder(Texts.of("exporters.all"))));
            menu.add(all("zip", () -> choice.exportZip(commands.proposedName())));
        }
        orNothing(menu, "menu.export.none");
    }

    private JMenuItem all(String key, Supplier<Optional<Path>> where) {
        JMenuItem item = new JMenuItem(Texts.of("menu.export." + key));
        item.setName("exportall." + key);
        item.addActionListener(event -> where.get().ifPresent(exports::exportAll));
        return item;
    }

    private static void orNothing(JMenu menu, String key) {
        if (menu.getItemCount() == 0) {
            JMenuItem none = new JMenuItem(Texts.of(key));
            none.setEnabled(false);
            menu.add(none);
        }
    }

    /** Runs something when a menu is opened. */
    private record Opening(Runnable action) implements MenuListener {
        @Override
        public void menuSelected(MenuEvent event) {
            action.run();
        }

        @Override
        public void menuDeselected(MenuEvent event) {}

        @Override
        public void menuCanceled(MenuEvent event) {}
    }
}
