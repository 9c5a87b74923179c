// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
/** The train as drawings. */
package drumfall.ui.view.train;
