// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.plugin;

/**
 * One exported file.
 *
 * @param name as the exporter named it
 * @param size bytes
 * @param sha256 hash of its bytes (FIPS 180-4), 64 lower-case hexadecimal digits
 */
public record WrittenFile(String name, long size, String sha256) {}
