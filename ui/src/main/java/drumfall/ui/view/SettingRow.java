// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view;

import drumfall.plugin.api.ExportSetting;
import drumfall.plugin.api.ExportSetting.Choice;
import drumfall.plugin.api.ExportSetting.YesNo;
import drumfall.ui.plugin.ExporterEntry;
import drumfall.ui.plugin.PluginFault;
import drumfall.ui.plugin.SettingWords;
import drumfall.ui.presenter.ExportSettings;
import drumfall.ui.presenter.Texts;
import drumfall.ui.view.look.Parts;
import drumfall.ui.view.look.SignIcon.Sign;
import java.awt.Rectangle;
import java.awt.event.ActionEvent;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.List;
import java.util.Optional;
import javax.swing.AbstractAction;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/** One setting of an exporter: label, entry, the way back to its usual value, what it does, and what is wrong with it. */
final class SettingRow extends JPanel {
    private final transient ExporterEntry exporter;
    private final transient ExportSetting<?> setting;
    private final transient ExportSettings settings;
    private final transient Runnable changed;
    private final transient Entry entry;
    private final JButton back = new JButton(Texts.of("export.back"));
    private final NoteLine note = new NoteLine();

    /**
     * A row.
     *
     * @param exporter whose setting
     * @param setting the setting
     * @param settings takes what is entered
     * @param changed is called after that
     */
    SettingRow(ExporterEntry exporter, ExportSetting<?> setting, ExportSettings settings, Runnable changed) {
        super(new MigLayout("insets 0, gap 8lp 2lp, hidemode 3, wrap 2", "[150lp!][grow,fill,0:0:]", ""));
        this.exporter = exporter;
        this.setting = setting;
        this.settings = settings;
        this.changed = changed;
        setOpaque(false);
        JLabel label = Parts.caption(setting.title());
        add(label, "wmin 0");
        this.entry = entry();
        String name = exporter.id() + "." + setting.id();
        entry.component().setName("export.set." + name);
        entry.component().setToolTipText(SettingWords.allowed(setting));
        label.setLabelFor(entry.component());
        JPanel entered = new JPanel(new MigLayout("insets 0, gap 8lp", "[grow,fill,0:0:][]", ""));
        entered.setOpaque(false);
        entered.add(Parts.named(entry.component(), exporter.title() + ": " + setting.title()), "growx, wmin 0");
        entry.component().getAccessibleContext().setAccessibleDescription(setting.help());
        back.setName("export.back." + name);
        back.setToolTipText(Texts.of("export.back.to", SettingWords.usual(setting)));
        back.addActionListener(event -> goBack());
        entered.add(Parts.named(back, Texts.of("export.back.name", setting.title(), SettingWords.usual(setting))));
        IntoView.follow(entry.component(), this);
        IntoView.follow(back, this);
        add(entered, "wmin 0, growx");
        add(Parts.lines(setting.help()), "skip 1, wmin 0");
        add(note, "skip 1, growx, wmin 0");
        refresh();
    }

    /**
     * What is typed or chosen in.
     *
     * @param component the field, box or list
     * @param show shows what is set
     */
    private record Entry(JComponent component, Runnable show) {}

    private Entry entry() {
        if (setting instanceof Choice choice) {
            return choice(choice);
        }
        return setting instanceof YesNo ? yesNo() : field();
    }

    private String text() {
        return settings.text(exporter, setting);
    }

    private void enter(String typed) {
        if (!typed.equals(text())) {
            settings.set(exporter, setting, typed);
            refresh();
            changed.run();
        }
    }

    private void goBack() {
        settings.reset(exporter, setting);
        refresh();
        changed.run();
    }

    private Entry field() {
        EntryField field = new EntryField(8, this::enter, () -> {});
        Before before = new Before(field);
        field.addFocusListener(before);
        field.getInputMap().put(KeyStroke.getKeyStroke("ESCAPE"), "before");
        field.getActionMap().put("before", before.action());
        return new Entry(field, () -> {
            field.show(text());
            field.mark(settings.fault(exporter, setting).isPresent());
        });
    }

    /** What stood in a field when it was entered: Esc brings it back, and closes the page if nothing was changed. */
    private final class Before extends FocusAdapter {
        private final EntryField field;
        private String text = "";

        Before(EntryField field) {
            this.field = field;
        }

        @Override
        public void focusGained(FocusEvent event) {
            text = field.getText();
        }

        AbstractAction action() {
            return new AbstractAction() {
                @Override
                public boolean isEnabled() {
                    return !field.getText().equals(text);
                }

                @Override
                public void actionPerformed(ActionEvent event) {
                    field.setText(text);
                    enter(text);
                }
            };
        }
    }

    private Entry yesNo() {
        JCheckBox box = new JCheckBox();
        box.addActionListener(event -> enter(SettingWords.text(box.isSelected())));
        return new Entry(box, () -> box.setSelected(text().equals(SettingWords.text(true))));
    }

    private Entry choice(Choice choice) {
        List<Choice.Value> values = choice.values();
        JComboBox<Choice.Value> box = new JComboBox<>(values.toArray(Choice.Value[]::new));
        box.setRenderer(new DefaultListCellRenderer() {
            @Override
            public java.awt.Component getListCellRendererComponent(
                    JList<?> list, Object value, int index, boolean selected, boolean focused) {
                String shown = value instanceof Choice.Value known ? known.title() : "";
                return super.getListCellRendererComponent(list, shown, index, selected, focused);
            }
        });
        box.addActionListener(event -> {
            if (box.getSelectedItem() instanceof Choice.Value chosen) {
                enter(chosen.id());
            }
        });
        return new Entry(
                box,
                () -> box.setSelectedItem(values.stream()
                        .filter(value -> value.id().equals(text()))
                        .findFirst()
                        .orElse(null)));
    }

    private void refresh() {
        entry.show().run();
        back.setEnabled(!settings.isUsual(exporter, setting));
        Optional<PluginFault> fault = settings.fault(exporter, setting);
        if (fault.isPresent()) {
            note.show(Sign.CROSS, fault.get().sentence());
        } else {
            note.clear();
        }
        revalidate();
        if (entry.component().isFocusOwner()) {
            // What is told below the entry has its room only after the layout.
            SwingUtilities.invokeLater(() -> scrollRectToVisible(new Rectangle(getSize())));
        }
    }
}
