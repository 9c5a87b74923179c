// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.sheet.pdf;

import org.apache.pdfbox.pdmodel.common.PDRectangle;

/** Sizes of paper (ISO 216; ANSI/ASME Y14.1 size A). */
public enum Paper {
    /** 210 by 297 mm. */
    A4(210, 297),
    /** 8.5 by 11 inches. */
    LETTER(215.9, 279.4);

    /** Points in a millimetre: 72 in an inch of 25.4 mm. */
    static final double POINTS = 72 / 25.4;

    private final double width;
    private final double height;

    Paper(double width, double height) {
        this.width = width;
        this.height = height;
    }

    /** Its name in file names. */
    public String fileName() {
        return this == A4 ? "a4" : "letter";
    }

    double width() {
        return width * POINTS;
    }

    double height() {
        return height * POINTS;
    }

    PDRectangle rectangle() {
        return new PDRectangle((float) width(), (float) height());
    }
}
