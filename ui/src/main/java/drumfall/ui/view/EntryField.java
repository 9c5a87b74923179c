// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view;

import java.awt.Rectangle;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.function.Consumer;
import javax.swing.JTextField;
import javax.swing.Timer;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;

/** A field for typed text: what is typed is entered after a short rest, on Enter, and when the field is left. */
final class EntryField extends JTextField {
    /** Rest after the last key before what stands there is entered, ms. */
    private static final int REST = 300;

    private final transient Consumer<String> entered;
    private final Timer rest = new Timer(REST, event -> enter());
    private boolean showing;

    /**
     * A field.
     *
     * @param columns width
     * @param entered is given what was typed
     * @param left is called when the maker is done with it
     */
    EntryField(int columns, Consumer<String> entered, Runnable left) {
        super(columns);
        this.entered = entered;
        rest.setRepeats(false);
        getDocument().addDocumentListener(new DocumentListener() {
            @Override
            public void insertUpdate(DocumentEvent event) {
                typed();
            }

            @Override
            public void removeUpdate(DocumentEvent event) {
                typed();
            }

            @Override
            public void changedUpdate(DocumentEvent event) {
                typed();
            }
        });
        addActionListener(event -> done(left));
        addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent event) {
                done(left);
            }
        });
    }

    private void typed() {
        if (!showing) {
            rest.restart();
        }
    }

    private void enter() {
        rest.stop();
        entered.accept(getText());
    }

    private void done(Runnable left) {
        if (rest.isRunning()) {
            enter();
        }
        left.run();
    }

    /** Shows what stands in the brief, unless the maker is in the middle of typing. */
    void show(String text) {
        if (!rest.isRunning() && !text.equals(getText())) {
            showing = true;
            setText(text);
            setCaretPosition(0);
            showing = false;
        }
    }

    /** Only a field that is typed in brings itself into view; showing another brief does not move the sheet. */
    @Override
    public void scrollRectToVisible(Rectangle part) {
        if (isFocusOwner()) {
            super.scrollRectToVisible(part);
        }
    }

    /** Marks the field as wrong, or no longer. */
    void mark(boolean wrong) {
        putClientProperty("JComponent.outline", wrong ? "error" : null);
    }
}
