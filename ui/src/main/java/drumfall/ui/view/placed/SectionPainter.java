// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.placed;

import drumfall.solver.layout.PartKind;
import drumfall.ui.presenter.Texts;
import drumfall.ui.view.placed.SectionPlan.Block;
import drumfall.ui.view.train.Inks;
import drumfall.ui.view.train.Pens;
import drumfall.ui.view.train.Role;
import drumfall.ui.view.train.TabularText;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;

/** Puts the section on paper. */
final class SectionPainter {
    private static final double FONT = 11;
    private static final double NANOMETRES = 1e6;

    /** From line to line of captions, in letter sizes. */
    private static final double LINE = 1.25;

    private final Graphics2D graphics;
    private final Inks inks;
    private final SectionPlan plan;
    private final SheetScale scale;
    private final TabularText text;
    private final double unit;
    private final Shown shown;

    SectionPainter(
            Graphics2D graphics,
            Inks inks,
            SectionPlan plan,
            SheetScale scale,
            TabularText text,
            double unit,
            Shown shown) {
        this.graphics = graphics;
        this.inks = inks;
        this.plan = plan;
        this.scale = scale;
        this.text = text;
        this.unit = unit;
        this.shown = shown;
    }

    void paint() {
        plan.plates().forEach(this::plate);
        plan.dial().map(SectionPlan.Dial::box).ifPresent(this::dial);
        plan.blocks().stream()
                .filter(block -> block.part().kind() == PartKind.ROD)
                .forEach(this::block);
        plan.front().forEach(slab -> part(slab.piece().arbor(), slab.box(), inks.face()));
        plan.blocks().stream()
                .filter(block -> block.part().kind() != PartKind.ROD)
                .forEach(this::block);
        for (int arbor = 0; arbor < plan.arbors().size(); arbor++) {
            axis(arbor);
        }
        depths();
    }

    private Rectangle2D onSheet(Rectangle2D box) {
        return new Rectangle2D.Double(
                scale.x(box.getMinX()),
                scale.y(box.getMaxY()),
                box.getWidth() * scale.scale(),
                box.getHeight() * scale.scale());
    }

    /** Cut material is hatched at 45 degrees, after ISO 128-3:2022. */
    private void plate(Rectangle2D plate) {
        Rectangle2D box = onSheet(plate);
        graphics.setColor(inks.wash());
        graphics.fill(box);
        Graphics2D cut = (Graphics2D) graphics.create();
        cut.clip(box);
        cut.setColor(inks.hairline());
        cut.setStroke(Pens.narrow(unit * 0.7));
        for (double x = box.getMinX() - box.getHeight(); x < box.getMaxX(); x += 7 * unit) {
            cut.draw(new Line2D.Double(x, box.getMaxY(), x + box.getHeight(), box.getMinY()));
        }
        cut.dispose();
        graphics.setColor(inks.line());
        graphics.setStroke(Pens.outline(unit));
        graphics.draw(box);
    }

    /** No dial is made, so that its room alone is shown. */
    private void dial(Rectangle2D room) {
        Rectangle2D box = onSheet(room);
        graphics.setColor(inks.hairline());
        graphics.setStroke(Pens.chain(unit));
        graphics.draw(new Line2D.Double(box.getMinX(), box.getMinY(), box.getMaxX(), box.getMinY()));
        graphics.draw(new Line2D.Double(box.getMinX(), box.getMaxY(), box.getMaxX(), box.getMaxY()));
    }

    private void block(Block block) {
        part(block.part().number(), block.box(), block.part().kind() == PartKind.PALLETS ? inks.paper() : inks.face());
    }

    private void part(int arbor, Rectangle2D cut, Color face) {
        boolean chosen = shown.isChosen(arbor);
        Rectangle2D box = onSheet(cut);
        graphics.setColor(face);
        graphics.fill(box);
        Color ink = chosen ? inks.role(Role.CHOSEN) : inks.line();
        graphics.setColor(ink);
        graphics.setStroke(chosen ? Pens.outline(unit) : Pens.narrow(unit));
        graphics.draw(box);
    }

    private void axis(int arbor) {
        double x = scale.x(plan.arbors().get(arbor));
        Rectangle2D all = plan.bounds();
        double top = scale.y(all.getMaxY()) - 8 * unit;
        double bottom = scale.y(all.getMinY()) + 8 * unit;
        graphics.setColor(inks.hairline());
        graphics.setStroke(Pens.chain(unit));
        graphics.draw(new Line2D.Double(x, top, x, bottom));
        boolean chosen = shown.isChosen(arbor);
        double radius = 7.5 * unit;
        double y = bottom + radius + 2 * unit;
        Ellipse2D ring = new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius);
        graphics.setColor(chosen ? inks.role(Role.CHOSEN) : inks.paper());
        graphics.fill(ring);
        graphics.setColor(chosen ? inks.role(Role.CHOSEN) : inks.lighter());
        graphics.setStroke(Pens.narrow(unit));
        graphics.draw(ring);
        graphics.setColor(chosen ? inks.paper() : inks.line());
        String mark = shown.words().mark(arbor);
        text.draw(graphics, mark, x - text.width(mark, FONT * unit) / 2, y + FONT * unit * 0.36, FONT * unit);
    }

    private void depths() {
        Rectangle2D back = plan.plates().get(0);
        Ruler ruler = new Ruler(graphics, inks, text, unit);
        double right = scale.x(back.getMaxX());
        double rear = back.getMinY();
        ruler.up(scale.y(0), scale.y(plan.innerDepth()), right + 18 * unit, right, right, length(plan.innerDepth()));
        ruler.up(scale.y(rear), scale.y(rear + plan.depth()), right + 40 * unit, right, right, length(plan.depth()));
        if (plan.frontRoom() > 0) {
            double face = plan.plates().get(1).getMaxY();
            ruler.up(
                    scale.y(face),
                    scale.y(face + plan.frontRoom()),
                    right + 62 * unit,
                    right,
                    scale.x(plan.arbors().get(shown.seen().train().meshesAbove())),
                    length(plan.frontRoom()));
        }
        shown.measured().ifPresent(arbor -> planes(arbor, ruler));
        captions();
    }

    private void captions() {
        double last = caption(Texts.of("placed.backplate"), plan.plates().get(0), Double.POSITIVE_INFINITY);
        last = caption(Texts.of("placed.frontplate"), plan.plates().get(1), last);
        if (plan.dial().isPresent()) {
            caption(Texts.of("placed.dialroom"), plan.dial().get().box(), last);
        }
    }

    /** Words on the left of a plate, or of what runs along with the plates; above the words before them, if need be. */
    private double caption(String words, Rectangle2D beside, double before) {
        double size = FONT * unit;
        double width = text.width(words, size);
        double x = scale.x(beside.getMinX()) - width - 6 * unit;
        double y = Math.min(scale.y(beside.getCenterY()) + size * 0.36, before - LINE * size);
        graphics.setColor(inks.paper());
        graphics.fill(new Rectangle2D.Double(x - 2 * unit, y - size, width + 4 * unit, LINE * size));
        graphics.setColor(inks.lighter());
        text.draw(graphics, words, x, y, size);
        return y;
    }

    /** Where the planes of an arbor's wheel and pinion lie before the back plate. */
    private void planes(int arbor, Ruler ruler) {
        double x = scale.x(plan.plates().get(0).getMinX()) - 90 * unit;
        plan.block(PartKind.WHEEL, arbor)
                .or(() -> plan.block(PartKind.ESCAPE_WHEEL, arbor))
                .or(() -> plan.block(PartKind.PALLETS, arbor))
                .or(() -> plan.block(PartKind.MINUTE_WHEEL, arbor))
                .map(Block::box)
                .ifPresent(box -> ruler.up(
                        scale.y(0),
                        scale.y(box.getMinY()),
                        x,
                        scale.x(plan.plates().get(0).getMinX()),
                        scale.x(box.getMinX()),
                        length(box.getMinY())));
    }

    private String length(double millimetres) {
        return shown.words().length(Math.round(millimetres * NANOMETRES));
    }
}
