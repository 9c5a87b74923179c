// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view;

import drumfall.plugin.api.ExportSetting;
import drumfall.ui.plugin.ExporterEntry;
import drumfall.ui.presenter.ExportSettings;
import drumfall.ui.presenter.Exports;
import drumfall.ui.presenter.Texts;
import drumfall.ui.view.look.Parts;
import java.awt.Frame;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** The page where exporters are ticked and set, and from which those that are ticked export together. */
final class ExportPage {
    private static final int HEIGHT = 620;

    private final Page page;
    private final Exports exports;
    private final List<JButton> buttons;

    /**
     * The page, not yet open.
     *
     * @param owner the window
     * @param exports the exporters
     * @param choice asks where to
     * @param proposed name of a zip file
     */
    ExportPage(Frame owner, Exports exports, FileChoice choice, Supplier<String> proposed) {
        this.exports = exports;
        this.page = new Page(owner, Texts.of("export.title"), "export");
        this.buttons = List.of(
                button("folder", () -> choice.exportFolder(Texts.of("exporters.ticked"))),
                button("zip", () -> choice.exportZip(proposed.get())));
        page.heading(Texts.of("export.title")).line(lead());
        exports.exporters().forEach(exporter -> page.part(part(exporter)));
        page.actions(buttons);
        refresh();
    }

    private String lead() {
        if (!exports.loaded()) {
            return Texts.of("plugins.loading");
        }
        return exports.exporters().isEmpty() ? Texts.of("plugins.none.next") : Texts.of("export.lead");
    }

    private JButton button(String key, Supplier<Optional<Path>> where) {
        JButton button = new JButton(Texts.of("export.into." + key));
        button.setName("export.into." + key);
        button.addActionListener(event -> where.get().ifPresent(exports::exportTicked));
        return button;
    }

    /** Nothing is begun that a wrong setting would refuse. */
    private void refresh() {
        List<ExporterEntry> ticked = exports.ticked();
        boolean ready = !ticked.isEmpty() && ticked.stream().allMatch(exports.settings()::sound);
        buttons.forEach(button -> button.setEnabled(ready));
    }

    private JPanel part(ExporterEntry exporter) {
        ExportSettings settings = exports.settings();
        JPanel part =
                new JPanel(new MigLayout("insets 4lp 0 0 0, gap 4lp 4lp, hidemode 3, wrap 1", "[grow,fill,0:0:]", ""));
        part.setOpaque(false);
        JCheckBox tick = new JCheckBox(exporter.title(), settings.takesPart(exporter));
        tick.setName("export.tick." + exporter.id());
        IntoView.follow(tick, tick);
        part.add(Parts.named(tick, exporter.title()), "wmin 0");
        List<SettingRow> rows = new ArrayList<>();
        for (ExportSetting<?> setting : exporter.settings()) {
            SettingRow row = new SettingRow(exporter, setting, settings, this::refresh);
            row.setVisible(tick.isSelected());
            rows.add(row);
            part.add(row, "gapleft 24lp, wmin 0");
        }
        tick.addActionListener(event -> {
            settings.setTakesPart(exporter, tick.isSelected());
            rows.forEach(row -> row.setVisible(tick.isSelected()));
            refresh();
            part.revalidate();
        });
        return part;
    }

    void open() {
        page.open(HEIGHT);
    }
}
