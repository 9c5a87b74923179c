// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.sheet.draw;

/**
 * A short text beside what it names.
 *
 * @param x where it begins, mm
 * @param y its base line, mm
 * @param text such as an arbor's number
 */
public record Label(double x, double y, String text) {}
