// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.sheet.content;

/**
 * Something that can be wrong with a clock and what it does.
 *
 * @param what is wrong
 * @param sign how to find it
 * @param leastWeight least running weight with it, kg; infinite if no weight drives the clock then
 */
record Fault(String what, String sign, double leastWeight) {}
