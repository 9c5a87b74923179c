// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.app;

import drumfall.solver.brief.Brief;
import drumfall.solver.rating.Rating;
import drumfall.solver.train.Train;
import drumfall.ui.plugin.PluginFolder;
import drumfall.ui.presenter.Front;
import drumfall.ui.presenter.SearchedOnce;
import drumfall.ui.presenter.Workspace;
import drumfall.ui.view.FileChoice;
import drumfall.ui.work.Searcher;
import java.awt.Component;
import java.awt.Container;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JMenuItem;
import org.assertj.swing.core.BasicRobot;
import org.assertj.swing.core.Robot;
import org.assertj.swing.edt.FailOnThreadViolationRepaintManager;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.timing.Condition;
import org.assertj.swing.timing.Pause;
import org.assertj.swing.timing.Timeout;

/** The program's window under test: the thin wrapper around the robot, so that tests speak of clocks. */
final class OpenWindow implements AutoCloseable, FileChoice {
    /** A wait longer than this hangs; far beyond any search of a small brief, even on a busy machine. */
    private static final Timeout HANGS = Timeout.timeout(2, TimeUnit.MINUTES);

    /** The robot's timer tasks look at a field that JDK 17 keeps closed; they say so and go on. */
    private static final Logger TIMERS = Logger.getLogger("org.assertj.swing.monitor.ProtectingTimerTask");

    static {
        TIMERS.setLevel(Level.OFF);
    }

    private final OneScreen screen;
    private final Robot robot;
    private final WindowProgram program;
    private Optional<Path> answer = Optional.empty();

    OpenWindow(Brief brief, Path home, List<PluginFolder> plugins) {
        this(brief, home, plugins, new SearchedOnce());
    }

    OpenWindow(Brief brief, Path home, List<PluginFolder> plugins, Searcher searcher) {
        FailOnThreadViolationRepaintManager.install();
        screen = new OneScreen();
        robot = BasicRobot.robotWithNewAwtHierarchy();
        try {
            program = on(() -> WindowProgram.made(
                    new WindowProgram.Start(brief, searcher, new Folders(home), plugins, Optional.of(this))));
            on(() -> {
                program.window().setVisible(true);
                program.workspace().solve();
                return null;
            });
        } catch (RuntimeException | Error fault) {
            // The robot holds the screen; the next test would wait for it for ever.
            robot.cleanUp();
            screen.close();
            throw fault;
        }
    }

    /** Runs something on the event thread and gives what comes of it. */
    static <T> T on(Callable<T> action) {
        return GuiActionRunner.execute(action);
    }

    <T> T state(java.util.function.Function<Workspace, T> question) {
        return on(() -> question.apply(program.workspace()));
    }

    void until(String what, Predicate<WindowProgram> holds) {
        Pause.pause(
                new Condition(what) {
                    @Override
                    public boolean test() {
                        return on(() -> holds.test(program));
                    }
                },
                HANGS);
    }

    void untilSolved() {
        until(
                "the front is finished",
                shown -> !shown.workspace().search().running()
                        && shown.workspace().front().isPresent()
                        && !shown.workspace().frontIsEarlier());
    }

    Front front() {
        return state(workspace -> workspace.front().orElseThrow());
    }

    Train chosen() {
        return state(workspace -> workspace.chosen().map(Rating::train).orElseThrow());
    }

    WindowProgram program() {
        return program;
    }

    /** Does a menu's command as its menu item does. */
    void command(String name) {
        command(name, 1);
    }

    /** Does a menu's command so many times, and waits for the window only then. */
    void command(String name, int times) {
        on(() -> {
            for (int i = 0; i < times; i++) {
                menuItem(name).doClick();
            }
            return null;
        });
        robot.waitForIdle();
    }

    /** Opens a menu, so that it is filled with what there is at the moment. */
    void openMenu(String name) {
        on(() -> {
            menuItem(name).setSelected(true);
            menuItem(name).setSelected(false);
            return null;
        });
    }

    private JMenuItem menuItem(String name) {
        return all(program.window().getJMenuBar())
                .filter(component -> name.equals(component.getName()))
                .map(JMenuItem.class::cast)
                .findFirst()
                .orElseThrow(() -> new AssertionError("There is no menu item " + name));
    }

    /** A container and everything in it, menus that are not open included. */
    static Stream<Component> all(Component top) {
        Stream<Component> children =
                top instanceof Container container ? Stream.of(container.getComponents()) : Stream.empty();
        Stream<Component> items =
                top instanceof javax.swing.JMenu menu ? Stream.of(menu.getMenuComponents()) : Stream.empty();
        return Stream.concat(Stream.of(top), Stream.concat(children, items).flatMap(OpenWindow::all));
    }

    /** Everything in the window and on the pages beside it. */
    Stream<Component> shown() {
        Stream<Component> pages = Stream.of(program.window().getOwnedWindows());
        return Stream.concat(Stream.of(program.window().getContentPane()), pages.filter(Component::isShowing))
                .flatMap(OpenWindow::all);
    }

    <T extends JComponent> T named(String name, Class<T> type) {
        return on(() -> shown().filter(component -> name.equals(component.getName()))
                .map(type::cast)
                .findFirst()
                .orElseThrow(() -> new AssertionError("There is no component " + name)));
    }

    /** Whether something of a name is there; called on the event thread. */
    boolean shows(String name) {
        return shown().anyMatch(component -> name.equals(component.getName()));
    }

    void press(String name) {
        AbstractButton button = named(name, AbstractButton.class);
        on(() -> {
            button.doClick();
            return null;
        });
        robot.waitForIdle();
    }

    /** Presses a key where the keyboard is, before anything else can happen; called on the event thread. */
    void pressKey(int key) {
        Component at = program.window().getMostRecentFocusOwner();
        at.dispatchEvent(
                new KeyEvent(at, KeyEvent.KEY_PRESSED, System.currentTimeMillis(), 0, key, KeyEvent.CHAR_UNDEFINED));
    }

    /** Replaces what stands in an entry of the brief and leaves it with Enter. */
    void type(String pointer, String text) {
        javax.swing.JTextField field = named(pointer, javax.swing.JTextField.class);
        on(() -> {
            field.requestFocusInWindow();
            field.setText(text);
            field.postActionEvent();
            return null;
        });
        robot.waitForIdle();
    }

    /** What the maker answers when asked for a file or folder. */
    void answering(Path path) {
        answer = Optional.of(path);
    }

    @Override
    public Optional<Path> toOpen() {
        return answer;
    }

    @Override
    public Optional<Path> toSave(String proposed) {
        return answer;
    }

    @Override
    public Optional<Path> exportFolder(String title) {
        return answer;
    }

    @Override
    public Optional<Path> exportZip(String proposed) {
        return answer;
    }

    @Override
    public void close() {
        try {
            if (OpenWindow.<Boolean>on(program.window()::isDisplayable)) {
                command("command.quit");
            }
        } finally {
            robot.cleanUp();
            screen.close();
        }
    }
}
