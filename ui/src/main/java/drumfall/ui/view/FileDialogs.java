// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view;

import drumfall.ui.design.DesignFile;
import drumfall.ui.presenter.Texts;
import java.awt.Component;
import java.io.File;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import javax.swing.JFileChooser;
import javax.swing.filechooser.FileNameExtensionFilter;

/** Asks for files and folders with the usual dialogs. */
final class FileDialogs implements FileChoice {
    private static final String BRIEF_ENDING = "json";
    private static final String ZIP = ".zip";

    private final Component parent;
    private Optional<File> folder = Optional.empty();

    FileDialogs(Component parent) {
        this.parent = parent;
    }

    @Override
    public Optional<Path> toOpen() {
        JFileChooser chooser = designs(Texts.of("files.open"));
        chooser.setFileFilter(new FileNameExtensionFilter(
                Texts.of("files.designs.briefs"), DesignFile.ENDING.substring(1), BRIEF_ENDING));
        return chosen(chooser, Texts.of("files.open"));
    }

    @Override
    public Optional<Path> toSave(String proposed) {
        JFileChooser chooser = designs(Texts.of("files.save"));
        chooser.setDialogType(JFileChooser.SAVE_DIALOG);
        chooser.setSelectedFile(new File(chooser.getCurrentDirectory(), proposed + DesignFile.ENDING));
        return chosen(chooser, Texts.of("files.save"));
    }

    @Override
    public Optional<Path> exportFolder(String title) {
        JFileChooser chooser = new JFileChooser(folder.orElse(null));
        chooser.setDialogTitle(title);
        chooser.setFileSelectionMode(JFileChooser.DIRECTORIES_ONLY);
        return chosen(chooser, title);
    }

    @Override
    public Optional<Path> exportZip(String proposed) {
        JFileChooser chooser = new JFileChooser(folder.orElse(null));
        chooser.setDialogTitle(Texts.of("exporters.all"));
        chooser.setDialogType(JFileChooser.SAVE_DIALOG);
        chooser.setFileFilter(new FileNameExtensionFilter(Texts.of("files.zips"), ZIP.substring(1)));
        chooser.setSelectedFile(new File(chooser.getCurrentDirectory(), proposed + ZIP));
        return chosen(chooser, Texts.of("menu.export")).map(FileDialogs::zipped);
    }

    /** The name typed, with its ending if that was left out. */
    private static Path zipped(Path typed) {
        String name = typed.getFileName().toString();
        return name.toLowerCase(Locale.ROOT).endsWith(ZIP) ? typed : typed.resolveSibling(name + ZIP);
    }

    private JFileChooser designs(String title) {
        JFileChooser chooser = new JFileChooser(folder.orElse(null));
        chooser.setDialogTitle(title);
        chooser.setFileFilter(new FileNameExtensionFilter(Texts.of("files.designs"), DesignFile.ENDING.substring(1)));
        return chooser;
    }

    private Optional<Path> chosen(JFileChooser chooser, String approve) {
        if (chooser.showDialog(parent, approve) != JFileChooser.APPROVE_OPTION) {
            return Optional.empty();
        }
        folder = Optional.of(chooser.getCurrentDirectory());
        return Optional.of(chooser.getSelectedFile().toPath());
    }
}
