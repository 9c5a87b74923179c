// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making.part;

import static drumfall.solver.making.part.Lengths.mm;

import drumfall.solver.making.solid.SizeLimitException;
import drumfall.solver.teeth.form.ToothForm;
import drumfall.solver.teeth.outline.GearOutline;
import drumfall.solver.teeth.outline.Outline;
import drumfall.solver.teeth.outline.WheelBody;
import drumfall.solver.train.ToothModule;

/**
 * Teeth at their size.
 *
 * @param form the teeth at module 1; not a lantern pinion, whose pins are no teeth
 * @param module the module
 * @param thinning taken off each tooth along the pitch circle, both flanks together, m
 */
public record GearCut(ToothForm form, ToothModule module, double thinning) {
    /** Arcs keep within this distance of the true flank, mm: a tenth of what a fine printer resolves. */
    private static final double TOLERANCE = 0.001;

    /**
     * Refuses a lantern pinion.
     *
     * @throws IllegalArgumentException if the form has no teeth
     */
    public GearCut {
        if (!form.mayDrive()) {
            throw new IllegalArgumentException(
                    "The form (lantern) of a toothed gear must have teeth. Maybe make it of shrouds and pins.");
        }
    }

    /** Radius of the root circle, m. */
    public double rootRadius() {
        return form.flank().rootRadius() * module.metres();
    }

    /** Radius of the tip circle before thinning, m. */
    public double tipRadius() {
        return form.flank().tipRadius() * module.metres();
    }

    /** Teeth or leaves. */
    public int count() {
        return form.toothCount();
    }

    /** Refuses a bore that reaches the roots. */
    void requireBore(String part, double bore, PrintSizes print) {
        print.requireWall("bore of " + part, bore);
        SizeLimitException.atMost(
                "bore of " + part + " of " + count(),
                bore,
                2 * (rootRadius() - print.wall()),
                "two extrusion widths short of the roots");
    }

    /** The outline over a body. */
    Outline outline(WheelBody body) {
        return GearOutline.of(form, body, new GearOutline.Drawing(module.millimetres(), mm(thinning), TOLERANCE));
    }

    /** The outline of a gear that is solid up to its bore. */
    Outline solid(double bore, PrintSizes print) {
        return outline(WheelBody.solid(mm(bore), mm(print.wall())));
    }
}
