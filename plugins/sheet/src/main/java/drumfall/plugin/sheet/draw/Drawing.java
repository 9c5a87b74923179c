// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.sheet.draw;

import drumfall.solver.making.MovementPart;
import drumfall.solver.making.solid.Box;
import drumfall.solver.making.solid.Slab;
import drumfall.solver.teeth.outline.Ring;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Lines on paper at their true size, millimetres.
 *
 * @param name of what is drawn, words joined by hyphens
 * @param box smallest box around the lines
 * @param strokes the lines
 * @param labels short texts
 */
public record Drawing(String name, Box box, List<Stroke> strokes, List<Label> labels) {
    /** Chords keep within this distance of an arc, mm; a sixth of the thinnest line a printer lays on paper. */
    private static final double CHORD_ERROR = 0.015;

    /** Copies the lines. */
    public Drawing {
        strokes = List.copyOf(strokes);
        labels = List.copyOf(labels);
    }

    /**
     * Lines without texts.
     *
     * @param name of what is drawn
     * @param box smallest box around the lines
     * @param strokes the lines
     */
    public Drawing(String name, Box box, List<Stroke> strokes) {
        this(name, box, strokes, List.of());
    }

    /**
     * A printed part seen from above: every edge of every slab, each once.
     *
     * @param part the part
     */
    public static Drawing of(MovementPart part) {
        Set<Ring> rings = new LinkedHashSet<>();
        for (Slab slab : part.solid().slabs()) {
            slab.region().rings().forEach(rings::add);
        }
        List<Stroke> strokes = rings.stream()
                .map(ring -> new Stroke(ring.polygon(CHORD_ERROR)))
                .toList();
        return new Drawing(part.name(), part.solid().box(), strokes);
    }

    /** The name as words, the first letter large. */
    public String title() {
        String words = name.replace('-', ' ');
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
