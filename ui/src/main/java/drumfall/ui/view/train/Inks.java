// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.train;

import java.awt.Color;
import javax.swing.UIDefaults;
import javax.swing.UIManager;

/**
 * The inks of a drawing on one paper.
 *
 * @param paper what is drawn on
 * @param line the main ink
 */
public record Inks(Color paper, Color line) {
    /** Share of paper in units and captions; more would fall below a contrast of 4.5. */
    private static final double LIGHTER = 0.26;

    private static final double HAIRLINE = 0.45;
    private static final double WASH = 0.86;

    /** Half of the full brightness; a paper below it counts as dark. */
    private static final double MIDDLE = 0.5;

    /** The inks of the look and feel in use. */
    public static Inks current() {
        return of(UIManager.getDefaults());
    }

    /**
     * The inks of a look and feel: its lightest paper by day, its darkest by night.
     *
     * @param defaults of the look and feel
     */
    static Inks of(UIDefaults defaults) {
        Color line = colour(defaults, "Table.foreground", Color.BLACK);
        Inks byDay = new Inks(colour(defaults, "Table.background", Color.WHITE), line);
        return byDay.dark() ? new Inks(colour(defaults, "Panel.background", Color.DARK_GRAY), line) : byDay;
    }

    private static Color colour(UIDefaults defaults, String key, Color whenUnstyled) {
        Color found = defaults.getColor(key);
        return found == null ? whenUnstyled : found;
    }

    boolean dark() {
        double brightness = 0.299 * paper.getRed() + 0.587 * paper.getGreen() + 0.114 * paper.getBlue();
        return brightness / 255 < MIDDLE;
    }

    /** Units and captions. */
    public Color lighter() {
        return mixed(line, LIGHTER);
    }

    /** Hairlines: pitch circles, dimension lines. */
    public Color hairline() {
        return mixed(line, HAIRLINE);
    }

    /** The face of solid parts. */
    public Color wash() {
        return mixed(line, WASH);
    }

    /** A part's face, a shade off the paper. */
    public Color face() {
        return mixed(line, 0.95);
    }

    /** The colour of a role on this paper. */
    public Color role(Role role) {
        return role.colour(dark());
    }

    /** A pale area in a role's colour. */
    public Color wash(Role role) {
        return mixed(role(role), 0.86);
    }

    private Color mixed(Color ink, double share) {
        return new Color(
                mixed(ink.getRed(), paper.getRed(), share),
                mixed(ink.getGreen(), paper.getGreen(), share),
                mixed(ink.getBlue(), paper.getBlue(), share));
    }

    private static int mixed(int ink, int paper, double share) {
        return (int) Math.round(ink * (1 - share) + paper * share);
    }
}
