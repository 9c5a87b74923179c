// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
/**
 * The smallest useful exporter: one page of text.
 *
 * <p>To try it, build the plugin api once ({@code mvn -pl plugins/api -am install} at the root of the program), then this
 * project ({@code mvn package} here), and copy {@code target/drumfall-summary-1.0.0.jar} to {@code .drumfall/plugins} in
 * your home folder.
 */
package stranger.summary;
