// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.power;

import drumfall.solver.quantity.Dimension;
import drumfall.ui.presenter.PowerSetting;
import drumfall.ui.presenter.PowerSetting.Dial;
import drumfall.ui.presenter.PowerSheet;
import drumfall.ui.presenter.ShownFigure;
import drumfall.ui.presenter.Texts;
import drumfall.ui.view.look.BandSlider;
import drumfall.ui.view.look.FigureLabel;
import drumfall.ui.view.look.Parts;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import javax.swing.JButton;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** The dials of weight, friction and quality, each with its value and the brief's band. */
final class PowerDials extends JPanel {
    private final transient PowerSheet sheet;
    private final Map<Dial, BandSlider> sliders = new EnumMap<>(Dial.class);
    private final Map<Dial, FigureLabel> values = new EnumMap<>(Dial.class);
    private final JButton back;

    PowerDials(PowerSheet sheet) {
        super(new MigLayout("insets 0 6lp 0 0, gap 4lp 1lp, wrap 2", "[][grow,fill]", ""));
        this.sheet = sheet;
        setOpaque(false);
        for (Dial dial : Dial.values()) {
            add(dial);
        }
        back = Parts.link(Texts.of("power.back"), sheet::reset);
        back.setName("power.back");
        back.setToolTipText(Texts.of("power.back.tip"));
        add(back, "span 2, al left, growx 0");
    }

    private void add(Dial dial) {
        String name = Texts.of("power.dial." + dial.name());
        BandSlider slider = new BandSlider(value -> sheet.set(dial, value));
        slider.setName("power.dial." + dial.name().toLowerCase(Locale.ROOT));
        slider.setToolTipText(Texts.of("power.dial." + dial.name() + ".tip"));
        Parts.named(slider, name);
        FigureLabel value = new FigureLabel(true);
        sliders.put(dial, slider);
        values.put(dial, value);
        add(Parts.remark(name));
        add(value, "growx, wmin 0");
        add(slider, "span 2, growx, w 10:10:, gapbottom 2lp");
    }

    /** Puts the keyboard on the weight. */
    void takeFocus() {
        sliders.get(Dial.WEIGHT).requestFocusInWindow();
    }

    /** Shows what the dials stand at. */
    void refresh() {
        for (Dial dial : Dial.values()) {
            double at = sheet.setting().map(setting -> setting.at(dial)).orElse(Double.NaN);
            sliders.get(dial).show(sheet.travel(dial), at);
            values.get(dial)
                    .setFigure(
                            sheet.setting().map(setting -> shown(dial, setting)).orElse(ShownFigure.NONE));
        }
        back.setEnabled(sheet.isMoved());
    }

    private ShownFigure shown(Dial dial, PowerSetting setting) {
        return switch (dial) {
            case WEIGHT -> ShownFigure.of(Dimension.MASS, setting.weight(), sheet.units(), ShownFigure.Rounding.UP);
            case FRICTION -> sheet.friction(setting.friction());
            case QUALITY -> ShownFigure.of(Dimension.NUMBER, Math.rint(setting.quality()), sheet.units());
        };
    }
}
