// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
/**
 * Starts the program and wires its parts: state, background work, files, plugins and window, or the terminal.
 *
 * <p>The only package that knows threads, folders and components at once; nothing depends on it.
 *
 * <p>Rejected: a container that wires by annotation. There are a dozen objects, made once, and their order can be read here.
 */
package drumfall.ui.app;
