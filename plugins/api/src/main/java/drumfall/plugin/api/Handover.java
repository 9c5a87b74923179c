// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.api;

import drumfall.plugin.api.Stability.Level;
import drumfall.solver.brief.Brief;
import drumfall.solver.layout.Layout;
import drumfall.solver.rating.Rating;
import java.util.Objects;
import java.util.Optional;

/**
 * What the maker hands over: a train, what was demanded of it, how it stands to that, and where its arbors stand.
 *
 * @param brief the demands
 * @param rating the train and its figures, rated against {@code brief}; it may miss demands
 * @param layout where everything stands; empty if the arbors have no place, or the brief leaves them unplaced
 * @param programVersion version of the program that hands over, for example {@code "0.1.0"}
 * @param settings the values of the exporter's own settings; since 1.1
 * @since 1.0
 */
@Stability(level = Level.STABLE, since = "1.0")
public record Handover(
        Brief brief, Rating rating, Optional<Layout> layout, String programVersion, SettingValues settings) {
    /** Refuses absent parts. */
    public Handover {
        Objects.requireNonNull(brief, "The brief of a handover must be there.");
        Objects.requireNonNull(rating, "The rating of a handover must be there.");
        Objects.requireNonNull(layout, "The layout of a handover must be an Optional. Maybe leave it empty.");
        Objects.requireNonNull(programVersion, "The programVersion of a handover must be there.");
        Objects.requireNonNull(settings, "The settings of a handover must be there. Maybe take the usual ones.");
    }

    /**
     * A handover with the usual values of all settings.
     *
     * @param brief the demands
     * @param rating the train and its figures
     * @param layout where everything stands, if it has a place
     * @param programVersion version of the program
     */
    public Handover(Brief brief, Rating rating, Optional<Layout> layout, String programVersion) {
        this(brief, rating, layout, programVersion, SettingValues.USUAL);
    }

    /**
     * A train whose arbors have no place.
     *
     * @param brief the demands
     * @param rating the train and its figures
     * @param programVersion version of the program
     */
    public static Handover unplaced(Brief brief, Rating rating, String programVersion) {
        return new Handover(brief, rating, Optional.empty(), programVersion);
    }

    /**
     * The same with other values of the exporter's settings.
     *
     * @param values the values
     * @since 1.1
     */
    public Handover with(SettingValues values) {
        return new Handover(brief, rating, layout, programVersion, values);
    }
}
