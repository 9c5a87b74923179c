// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.brief;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.samples.Briefs;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** A brief or its locks with one group exchanged differ in that group and in nothing else. */
class BriefChangesTest {
    private static final Brief DEMO = BundledBriefs.demo();
    private static final Optional<Quantity> LENGTH = Optional.of(Quantity.parse(Dimension.LENGTH, "30 mm"));
    private static final Locks HELD = new Locks(
            List.of(MeshLock.open(new MeshPlace(MeshPlace.Side.ABOVE, 1)).withWheel(Optional.of(80))),
            Optional.of(1),
            Optional.of(2),
            LENGTH,
            Optional.of(2),
            Optional.of(30),
            Optional.of(Quantity.parse(Dimension.ANGLE, "90 deg")),
            LENGTH,
            LENGTH);
    private static final Brief OTHER = Briefs.with(
                    BundledBriefs.load(BundledBriefs.DESK_CLOCK).orElseThrow(),
                    "/arbors/centre/diameter = \"5 mm\" & /objectives = [{\"figure\": \"meshes\"}]")
            .withLocks(HELD);

    @TestFactory
    Stream<DynamicTest> one_group_of_a_brief_is_exchanged() {
        return changes(DEMO, OTHER);
    }

    @TestFactory
    Stream<DynamicTest> one_lock_is_exchanged() {
        return changes(Locks.NONE, HELD);
    }

    private static Stream<DynamicTest> changes(Record from, Record to) {
        return Arrays.stream(from.getClass().getMethods())
                .filter(method -> method.getName().startsWith("with") && method.getParameterCount() == 1)
                .map(method -> DynamicTest.dynamicTest(method.getName(), () -> changes(from, to, method)));
    }

    private static void changes(Record from, Record to, Method with) throws ReflectiveOperationException {
        String name = with.getName().substring(4, 5).toLowerCase(Locale.ROOT)
                + with.getName().substring(5);
        RecordComponent[] components = from.getClass().getRecordComponents();
        RecordComponent exchanged = Arrays.stream(components)
                .filter(component -> component.getName().equals(name))
                .findFirst()
                .orElseThrow();
        assertThat(exchanged.getAccessor().invoke(from))
                .isNotEqualTo(exchanged.getAccessor().invoke(to));

        Object changed = with.invoke(from, exchanged.getAccessor().invoke(to));

        for (RecordComponent component : components) {
            assertThat(component.getAccessor().invoke(changed))
                    .isEqualTo(component.getAccessor().invoke(component.equals(exchanged) ? to : from));
        }
    }
}
