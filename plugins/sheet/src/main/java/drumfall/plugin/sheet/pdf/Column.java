// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.sheet.pdf;

import java.io.IOException;

/** The text column that runs from page to page. */
final class Column implements AutoCloseable {
    static final double MARGIN = 18 * Paper.POINTS;
    private static final double FOOT = 22 * Paper.POINTS;

    private final Booklet booklet;
    private Ink ink;
    private double y;

    Column(Booklet booklet) throws IOException {
        this.booklet = booklet;
        turn();
    }

    Ink ink() {
        return ink;
    }

    double left() {
        return MARGIN;
    }

    double right() {
        return booklet.paper().width() - MARGIN;
    }

    double width() {
        return right() - left();
    }

    /** Height above the foot of the page, points. */
    double room() {
        return y - FOOT;
    }

    double fullRoom() {
        return booklet.paper().height() - MARGIN - FOOT;
    }

    /** Turns the page unless so much room is left. Answers whether it turned. */
    boolean need(double height) throws IOException {
        if (room() >= height || room() >= fullRoom()) {
            return false;
        }
        turn();
        return true;
    }

    private void turn() throws IOException {
        if (ink != null) {
            ink.close();
        }
        ink = booklet.page();
        y = booklet.paper().height() - MARGIN;
    }

    /** Goes down and answers the new height. */
    double down(double height) {
        y -= height;
        return y;
    }

    /** Goes down only where something stands above. */
    void skip(double height) {
        if (room() < fullRoom()) {
            y -= height;
        }
    }

    @Override
    public void close() throws IOException {
        ink.close();
    }
}
