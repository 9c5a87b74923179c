// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.sheet;

/** Kinds of leaf fields of a sheet. */
public enum FieldKind {
    /** A number with its unit, typed as text. */
    QUANTITY,
    /** A whole number. */
    COUNT,
    /** True or false. */
    FLAG,
    /** Free text. */
    TEXT,
    /** One of several words. */
    CHOICE
}
