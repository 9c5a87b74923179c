// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.sheet.content;

import drumfall.plugin.sheet.draw.Drawing;
import java.util.List;

/** One piece of a sheet. */
public sealed interface Block {
    /**
     * Puts it on a page.
     *
     * @param writer of the page
     * @param <X> what can go wrong
     */
    <X extends Exception> void write(Writer<X> writer) throws X;

    /**
     * Writes the kinds of blocks.
     *
     * @param <X> what can go wrong
     */
    interface Writer<X extends Exception> {
        /** Writes a paragraph. */
        void paragraph(Paragraph paragraph) throws X;

        /** Writes a list. */
        void listing(Listing listing) throws X;

        /** Writes a table. */
        void table(Table table) throws X;

        /** Writes drawings. */
        void figures(Figures figures) throws X;
    }

    /**
     * A paragraph.
     *
     * @param text its text
     */
    record Paragraph(String text) implements Block {
        @Override
        public <X extends Exception> void write(Writer<X> writer) throws X {
            writer.paragraph(this);
        }
    }

    /**
     * A list.
     *
     * @param ordered whether its items are numbered
     * @param items its items
     */
    record Listing(boolean ordered, List<String> items) implements Block {
        /** Copies the items. */
        public Listing {
            items = List.copyOf(items);
        }

        @Override
        public <X extends Exception> void write(Writer<X> writer) throws X {
            writer.listing(this);
        }
    }

    /**
     * A column of a table.
     *
     * @param head its head
     * @param share of the table's width, in any unit that all columns share, positive
     * @param numbers whether its cells are numbers, which stand at the right
     */
    record Column(String head, double share, boolean numbers) {}

    /**
     * A table whose first column names the rows.
     *
     * @param caption what it shows
     * @param columns its columns
     * @param rows its cells, row by row
     */
    record Table(String caption, List<Column> columns, List<List<String>> rows) implements Block {
        /**
         * Copies the lists.
         *
         * @throws IllegalArgumentException if a row has more or fewer cells than there are columns
         */
        public Table {
            columns = List.copyOf(columns);
            rows = rows.stream().map(List::copyOf).toList();
            for (List<String> row : rows) {
                if (row.size() != columns.size()) {
                    throw new IllegalArgumentException("The cells (" + row.size() + ") of a row of table (" + caption
                            + ") must be " + columns.size() + ". Maybe a column was left out.");
                }
            }
        }

        @Override
        public <X extends Exception> void write(Writer<X> writer) throws X {
            writer.table(this);
        }
    }

    /**
     * Drawings side by side.
     *
     * @param drawings the drawings, each shrunk to its place
     * @param inARow how many stand side by side, at least 1
     */
    record Figures(List<Drawing> drawings, int inARow) implements Block {
        /** Copies the drawings. */
        public Figures {
            drawings = List.copyOf(drawings);
        }

        @Override
        public <X extends Exception> void write(Writer<X> writer) throws X {
            writer.figures(this);
        }
    }
}
