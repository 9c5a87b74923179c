// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.UnitSystem;
import drumfall.solver.teeth.contact.MeshContact;
import java.util.Locale;

/** Figures of the mesh looked into, each with a card that says where it comes from. */
public enum MeshFigure {
    /** Least torque of the pitch as a share of that without friction. */
    WORST("mesh-worst-torque"),
    /** Work given out over a pitch for work put in. */
    MEAN("mesh-mean"),
    /** Binding friction less the friction set. */
    RESERVE("binding-reserve"),
    /** Least play along the pitch circle. */
    BACKLASH("backlash");

    private static final double PERCENT = 100;

    private final String card;

    MeshFigure(String card) {
        this.card = card;
    }

    /** What it is called. */
    public String title() {
        return Texts.of("meshfigure." + name());
    }

    /**
     * Its value.
     *
     * @param traced the mesh
     * @param units which units are read
     */
    public ShownFigure value(MeshState.Traced traced, UnitSystem units) {
        MeshContact contact = traced.contact();
        return switch (this) {
            case WORST -> percent(contact.worstTorque());
            case MEAN -> percent(contact.mean());
            case RESERVE ->
                Double.isFinite(contact.bindingReserve())
                        ? ShownFigure.of(Dimension.NUMBER, contact.bindingReserve(), units)
                                .withMinusSign()
                        : new ShownFigure(Texts.of("mesh.never"), "");
            case BACKLASH ->
                ShownFigure.of(Dimension.LENGTH, traced.mesh().backlash(), units)
                        .withMinusSign();
        };
    }

    /** A share in percent with one decimal. */
    public static ShownFigure percent(double share) {
        return new ShownFigure(String.format(Locale.ROOT, "%.1f", PERCENT * share), "%").withMinusSign();
    }

    /**
     * Where it comes from.
     *
     * @param traced the mesh
     * @param setting what the dials stand at
     * @param units which units are read
     */
    public WhereCard card(MeshState.Traced traced, MeshSetting setting, UnitSystem units) {
        return new BookCards(units)
                .shown(
                        title(),
                        value(traced, units),
                        traced.mesh().cards(setting).card(card).orElseThrow());
    }
}
