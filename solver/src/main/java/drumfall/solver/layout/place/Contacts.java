// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.place;

import drumfall.solver.layout.Half;
import drumfall.solver.layout.LayoutNeed;
import drumfall.solver.layout.Part;
import drumfall.solver.layout.PartKind;
import drumfall.solver.layout.size.MovementParts;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** What must be clear of what, for every two arbors and for the line and the weight; furthest reach first. */
final class Contacts {
    private final LayoutNeed need;
    private final MovementParts parts;
    private final Slots slots;
    private final List<List<Item>> items;
    private final List<Joint> joints;
    private final Contact[][][] pairs;
    private final Contact[][] line;
    private final Contact[][] weight;
    private final Item[] largest;
    private final Item[] largestBetweenPlates;

    /** Of a whole movement. */
    Contacts(LayoutNeed need) {
        this(need, part -> true);
    }

    /** Of a half alone. */
    Contacts(LayoutNeed need, Half half) {
        this(need, part -> half.holds(part, need.parts()));
    }

    private Contacts(LayoutNeed need, Predicate<Part> held) {
        this.need = need;
        this.parts = need.parts();
        this.slots = new Slots(parts.meshes().size());
        this.items = ItemList.of(parts, slots).stream()
                .map(of -> of.stream().filter(item -> held.test(item.part())).toList())
                .toList();
        this.joints = Joint.order(need).stream()
                .filter(joint -> !items.get(joint.arbor()).isEmpty())
                .toList();
        int arbors = items.size();
        this.pairs = new Contact[arbors][arbors][];
        this.line = new Contact[arbors][];
        this.weight = new Contact[arbors][];
        this.largest = items.stream().map(of -> furthest(of.stream())).toArray(Item[]::new);
        this.largestBetweenPlates = items.stream()
                .map(of -> furthest(of.stream().filter(Item::isBetweenPlates)))
                .toArray(Item[]::new);
        for (int arbor = 0; arbor < arbors; arbor++) {
            for (int other = 0; other < arbors; other++) {
                pairs[arbor][other] = arbor == other ? new Contact[0] : between(arbor, other);
            }
            line[arbor] = arbor == 0 || items.get(0).isEmpty() ? new Contact[0] : withLine(arbor);
            weight[arbor] = items.get(arbor).isEmpty() ? new Contact[0] : new Contact[] {withWeight(arbor)};
        }
    }

    /** The arbors that parts stand on, in the order of placing. */
    List<Joint> joints() {
        return joints;
    }

    Contact[] of(int arbor, int other) {
        return pairs[arbor][other];
    }

    Contact[] withLineOf(int arbor) {
        return line[arbor];
    }

    Contact[] withWeightOf(int arbor) {
        return weight[arbor];
    }

    /** The part of an arbor that reaches furthest, and so decides on the extent. */
    Item largest(int arbor) {
        return largest[arbor];
    }

    /** The part of an arbor between the plates that reaches furthest. */
    Item largestBetweenPlates(int arbor) {
        return largestBetweenPlates[arbor];
    }

    /** Null for an arbor without parts. */
    private static Item furthest(Stream<Item> items) {
        return items.max(Comparator.comparingLong(Item::radius)).orElse(null);
    }

    private Contact[] between(int arbor, int other) {
        List<Contact> found = new ArrayList<>();
        for (Item item : items.get(arbor)) {
            for (Item mate : items.get(other)) {
                if (!works(item, mate) && !works(mate, item)) {
                    add(found, item, mate.part(), mate.radius(), mate.slot());
                }
            }
        }
        return furthestFirst(found);
    }

    private Contact[] withLine(int arbor) {
        List<Contact> found = new ArrayList<>();
        long half = (need.line().diameter() + 1) / 2;
        for (Item item : items.get(arbor)) {
            add(found, item, new Part(PartKind.LINE, 0), half, Slots.DRUM);
        }
        return furthestFirst(found);
    }

    private Contact withWeight(int arbor) {
        Item item = largest(arbor);
        return new Contact(
                new Part(PartKind.WEIGHT, 0),
                item.part(),
                item.radius() + need.gaps().radial(),
                Slots.ALWAYS);
    }

    private void add(List<Contact> found, Item item, Part part, long radius, int slot) {
        int meeting = slots.meeting(item.slot(), slot);
        if (meeting != Slots.NEVER) {
            found.add(new Contact(
                    item.part(), part, item.radius() + radius + need.gaps().radial(), meeting));
        }
    }

    private static Contact[] furthestFirst(List<Contact> found) {
        found.sort(Comparator.comparingLong(Contact::reach).reversed());
        return found.toArray(Contact[]::new);
    }

    /** Whether a gear works with a part, or with the gear that the part carries, so that they are to be close. */
    private boolean works(Item gear, Item other) {
        int from = gear.part().number();
        int to = other.part().number();
        PartKind mate = other.part().kind();
        boolean carrier = mate == PartKind.ROD || mate == PartKind.HUB;
        boolean minute = to == parts.minuteArbor();
        return switch (gear.part().kind()) {
            case WHEEL -> to == from + 1 && (mate == PartKind.PINION || carrier);
            case PINION -> to == from - 1 && carrier;
            case PALLETS -> to == parts.escapeArbor() && (mate == PartKind.ESCAPE_WHEEL || carrier);
            case CANNON_PINION -> minute && (mate == PartKind.MINUTE_WHEEL || mate == PartKind.ROD);
            case HOUR_WHEEL -> minute && (mate == PartKind.MINUTE_PINION || mate == PartKind.ROD);
            case MINUTE_WHEEL, MINUTE_PINION -> to == parts.centreArbor() && mate == PartKind.ROD;
            default -> false;
        };
    }
}
