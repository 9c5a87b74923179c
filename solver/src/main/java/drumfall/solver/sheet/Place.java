// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.sheet;

/**
 * A place in a sheet as a JSON pointer (RFC 6901, section 3: "~" is written "~0" and "/" is written "~1").
 *
 * @param pointer the pointer; empty for the whole sheet
 */
record Place(String pointer) {
    static final Place TOP = new Place("");

    Place at(String name) {
        return new Place(pointer + "/" + name.replace("~", "~0").replace("/", "~1"));
    }

    Place at(int index) {
        return new Place(pointer + "/" + index);
    }
}
