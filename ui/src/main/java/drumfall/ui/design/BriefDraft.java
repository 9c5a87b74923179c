// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.design;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import drumfall.solver.brief.Brief;
import drumfall.solver.brief.BriefReader;
import drumfall.solver.brief.BriefWriter;
import drumfall.solver.brief.Locks;
import drumfall.solver.sheet.SheetProblem;
import drumfall.solver.sheet.SheetReader;
import drumfall.solver.sheet.SheetResult;
import java.util.List;
import java.util.Optional;

/** A brief exactly as typed, in order or not; immutable. */
public final class BriefDraft {
    private static final String LOCKS = "locks";

    private final ObjectNode tree;
    private final SheetResult<Brief> result;

    private BriefDraft(ObjectNode tree) {
        this.tree = tree;
        this.result = BriefReader.read(tree);
    }

    /** The draft of a brief that is in order. */
    public static BriefDraft of(Brief brief) {
        return new BriefDraft(BriefWriter.tree(brief));
    }

    /**
     * The draft of a tree.
     *
     * @param tree JSON as a brief's file holds it; it is copied
     */
    public static BriefDraft of(ObjectNode tree) {
        return new BriefDraft(tree.deepCopy());
    }

    /** The tree, a copy. */
    public ObjectNode tree() {
        return tree.deepCopy();
    }

    /** The brief, if the draft is in order. */
    public Optional<Brief> brief() {
        return result.accepted();
    }

    /** What is wrong with it; empty if it is in order. */
    public List<SheetProblem> problems() {
        return result.problems();
    }

    /** The brief's name as typed; empty if there is none. */
    public String name() {
        return typed("/name");
    }

    /** What is held fast, even where other entries are refused; nothing if the locks themselves cannot be read. */
    public Locks locks() {
        return SheetReader.read(Locks.class, tree.path(LOCKS)).accepted().orElse(Locks.NONE);
    }

    /** The same draft with other locks. */
    public BriefDraft withLocks(Locks locks) {
        ObjectNode changed = tree.deepCopy();
        changed.set(LOCKS, drumfall.solver.sheet.SheetWriter.tree(locks));
        return new BriefDraft(changed);
    }

    /**
     * The same draft with what another brief holds and with its dial in the same place of the frame; all else stays as typed.
     *
     * @param kept the brief with the holes of plates held
     */
    public BriefDraft keepingHolesOf(Brief kept) {
        BriefDraft changed = withLocks(kept.locks());
        JsonNode frame = BriefWriter.tree(kept).path("frame");
        for (String field : List.of("dialFromLeft", "dialFromBottom")) {
            changed = changed.with("/frame/" + field, frame.path(field));
        }
        return changed;
    }

    /**
     * What stands at a place, a copy; a missing node if nothing does.
     *
     * @param pointer JSON pointer (RFC 6901)
     */
    public JsonNode at(String pointer) {
        return tree.at(pointer).deepCopy();
    }

    /**
     * What was typed at a place; empty if there is nothing or a whole group.
     *
     * @param pointer JSON pointer
     */
    public String typed(String pointer) {
        JsonNode node = tree.at(pointer);
        return node.isValueNode() && !node.isNull() ? node.asText() : "";
    }

    /**
     * The same draft with another value at a place; groups on the way there are made.
     *
     * @param pointer JSON pointer of a named field
     * @param value what is to stand there
     */
    public BriefDraft with(String pointer, JsonNode value) {
        ObjectNode changed = tree.deepCopy();
        group(changed, parent(pointer)).set(last(pointer), value);
        return new BriefDraft(changed);
    }

    /**
     * The same draft without a field; a group left with nothing in it goes too.
     *
     * @param pointer JSON pointer of a named field
     */
    public BriefDraft without(String pointer) {
        ObjectNode changed = tree.deepCopy();
        if (changed.at(parent(pointer)) instanceof ObjectNode group) {
            group.remove(last(pointer));
            boolean empty = group.isEmpty() && !parent(pointer).isEmpty();
            return empty ? new BriefDraft(changed).without(parent(pointer)) : new BriefDraft(changed);
        }
        return this;
    }

    private static ObjectNode group(ObjectNode top, String pointer) {
        if (pointer.isEmpty()) {
            return top;
        }
        ObjectNode above = group(top, parent(pointer));
        return above.get(last(pointer)) instanceof ObjectNode group ? group : above.putObject(last(pointer));
    }

    private static String parent(String pointer) {
        return pointer.substring(0, pointer.lastIndexOf('/'));
    }

    private static String last(String pointer) {
        return pointer.substring(pointer.lastIndexOf('/') + 1);
    }

    @Override
    public boolean equals(Object object) {
        return object instanceof BriefDraft other && tree.equals(other.tree);
    }

    @Override
    public int hashCode() {
        return tree.hashCode();
    }

    @Override
    public String toString() {
        return tree.toString();
    }
}
