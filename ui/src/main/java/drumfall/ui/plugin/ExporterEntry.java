// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.plugin;

/**
 * An exporter that can be used.
 *
 * @param id its id
 * @param title its title
 */
public record ExporterEntry(String id, String title) {}
