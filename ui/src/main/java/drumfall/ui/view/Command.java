// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view;

import drumfall.ui.presenter.Texts;
import java.awt.event.ActionEvent;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import javax.swing.AbstractAction;
import javax.swing.Action;
import javax.swing.KeyStroke;

/** Something the maker can do: its words and keys come from the bundle, whether it can be done from a predicate. */
final class Command extends AbstractAction {
    private final String key;
    private final transient Runnable action;
    private transient BooleanSupplier possible = () -> true;
    private transient Supplier<Optional<String>> object = Optional::empty;
    private transient Optional<BooleanSupplier> on = Optional.empty();

    Command(String key, Runnable action) {
        super(Texts.of("command." + key));
        this.key = key;
        this.action = action;
        putValue(
                Action.MNEMONIC_KEY,
                KeyStroke.getKeyStroke(Texts.of("command." + key + ".mnemonic")).getKeyCode());
        if (Texts.has("command." + key + ".tip")) {
            putValue(Action.SHORT_DESCRIPTION, Texts.of("command." + key + ".tip"));
        }
        if (Texts.has("command." + key + ".key")) {
            putValue(Action.ACCELERATOR_KEY, KeyStroke.getKeyStroke(Texts.of("command." + key + ".key")));
        }
    }

    /** Can be done only if something holds. */
    Command when(BooleanSupplier predicate) {
        possible = predicate;
        return this;
    }

    /** Names what it is done to, if there is something. */
    Command naming(Supplier<Optional<String>> named) {
        object = named;
        return this;
    }

    /** Is a switch that is on while something holds. */
    Command on(BooleanSupplier state) {
        on = Optional.of(state);
        return this;
    }

    boolean isSwitch() {
        return on.isPresent();
    }

    String key() {
        return key;
    }

    /** Looks again whether it can be done, what it is called and whether it is on. */
    void refresh() {
        setEnabled(possible.getAsBoolean());
        on.ifPresent(state -> putValue(Action.SELECTED_KEY, state.getAsBoolean()));
        putValue(
                Action.NAME,
                object.get()
                        .map(name -> Texts.of("command." + key + ".named", name))
                        .orElseGet(() -> Texts.of("command." + key)));
    }

    @Override
    public void actionPerformed(ActionEvent event) {
        refresh();
        if (isEnabled()) {
            action.run();
        }
    }
}
