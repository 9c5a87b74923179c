// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import com.fasterxml.jackson.databind.node.IntNode;
import com.fasterxml.jackson.databind.node.TextNode;
import drumfall.solver.brief.Brief;
import drumfall.solver.brief.BundledBriefs;
import drumfall.ui.design.BriefDraft;

/** Briefs with few choices, whose fronts are proved in well under a second. */
public final class SmallBriefs {
    private SmallBriefs() {}

    /** The demonstration brief with few teeth, one module and one escape wheel. */
    public static Brief small() {
        return BriefDraft.of(BundledBriefs.demo())
                .with("/name", TextNode.valueOf("Small wall clock"))
                .with("/teeth/wheelTeeth/from", IntNode.valueOf(62))
                .with("/teeth/wheelTeeth/to", IntNode.valueOf(72))
                .with("/teeth/leaves/from", IntNode.valueOf(8))
                .with("/teeth/leaves/to", IntNode.valueOf(8))
                .with("/train/above/to", IntNode.valueOf(1))
                .with("/train/below/to", IntNode.valueOf(2))
                .with("/train/below/from", IntNode.valueOf(2))
                .with("/escapement/teeth/from", IntNode.valueOf(30))
                .with("/escapement/teeth/to", IntNode.valueOf(30))
                .with("/beat/pendulumLength/from", TextNode.valueOf("0.8 m"))
                .with("/beat/pendulumLength/to", TextNode.valueOf("1.1 m"))
                .with("/run/atLeast", TextNode.valueOf("3 d"))
                .with("/run/wanted", TextNode.valueOf("5 d"))
                .with("/weight/limit", TextNode.valueOf("12 kg"))
                .brief()
                .orElseThrow();
    }
}
