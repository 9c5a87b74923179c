// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.plugin;

/** What can be wrong with a plugin or an export; each kind has its sentence in the bundle, keyed by its name. */
public enum FaultKind {
    /** A plugin folder is there but cannot be listed. */
    FOLDER_UNREADABLE,
    /** The file is no jar, or a damaged one. */
    NOT_A_JAR,
    /** The jar names no exporter. */
    NO_EXPORTER,
    /** The manifest does not say which api the jar asks for, or not in a readable way. */
    NO_API_VERSION,
    /** The jar asks for an api that this program does not have. */
    NEWER_API,
    /** A class is missing or does not fit. */
    LINKAGE,
    /** The exporter threw while it was made or asked for its id and title. */
    FAILED_TO_START,
    /** The exporter did not answer in time while it was made or asked for its id and title. */
    HUNG_AT_START,
    /** The id breaks the rule for ids. */
    BAD_ID,
    /** The title breaks the rule for titles. */
    BAD_TITLE,
    /** The declaration of the settings breaks a rule. */
    BAD_SETTINGS,
    /** An exporter found earlier has the id. */
    ID_TAKEN,
    /** No exporter that is loaded has the id. */
    UNKNOWN_EXPORTER,
    /** No exporter is loaded at all. */
    NONE_LOADED,
    /** The exporter has settings, but none of that name. */
    UNKNOWN_SETTING,
    /** The exporter has no settings at all. */
    NO_SETTINGS,
    /** A length that was set cannot be read. */
    UNREADABLE_SETTING,
    /** What was set is not allowed. */
    BAD_SETTING,
    /** Something was set for an exporter that takes no part in the export. */
    IDLE_SETTING,
    /** The exporter cannot export this train until the maker changes something. */
    REFUSED,
    /** The exporter threw while it exported. */
    THREW,
    /** The export took longer than the limit. */
    HUNG,
    /** An earlier export took longer than the limit; its thread may still run. */
    STILL_HANGING,
    /** The exporter asked for a file outside its folder. */
    NAME_LEAVES_FOLDER,
    /** The exporter asked for a file name that breaks a rule or is taken. */
    BAD_FILE_NAME,
    /** Something was written, changed or removed that did not go through the folder. */
    WROTE_OUTSIDE,
    /** The exporter did not close a file. */
    LEFT_OPEN,
    /** The exporter wrote no file. */
    NOTHING_WRITTEN,
    /** The target folder cannot be written to. */
    TARGET_UNWRITABLE,
    /** The target folder holds a file that no export wrote, or that was changed since. */
    TARGET_IN_USE
}
