// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.kit;

/** How many rolling bearings a movement is built with. */
public enum BuildWay {
    /** As the brief says. */
    AS_GIVEN("as the brief says"),
    /** Plain bores throughout. */
    PLAIN("no rolling bearings"),
    /** Rolling bearings on the arbors where they save most of the weight, and on no others. */
    RECOMMENDED("bearings where they save most"),
    /** Two rolling bearings on every arbor of the train. */
    EVERYWHERE("bearings on every arbor");

    private final String title;

    BuildWay(String title) {
        this.title = title;
    }

    /** What a builder calls it. */
    public String title() {
        return title;
    }
}
