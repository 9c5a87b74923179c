// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.design;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import drumfall.solver.brief.Brief;
import drumfall.solver.brief.BundledBriefs;
import drumfall.solver.layout.DirectionLock;
import drumfall.solver.layout.Locks;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.Reeving;
import drumfall.solver.train.ToothModule;
import drumfall.solver.train.Train;
import drumfall.ui.design.DesignFault.Kind;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class DesignFileTest {
    private static final Train TRAIN = new Train(
            List.of(
                    Mesh.of(85, 10, ToothModule.ofMillimetres("1.5")),
                    Mesh.of(64, 8, ToothModule.ofMillimetres("1.25")),
                    Mesh.of(60, 8, ToothModule.ofMillimetres("1"))),
            1,
            BigFraction.of(36, 1000),
            Reeving.DOUBLE,
            30);

    @TempDir
    Path folder;

    private static DrawnArbors drawn(double first, double motion) {
        return new DrawnArbors(TRAIN, List.of(new DirectionLock(1, first), new DirectionLock(3, motion)));
    }

    static Stream<Design> designs() {
        List<Brief> briefs = BundledBriefs.names().stream()
                .flatMap(name -> BundledBriefs.load(name).stream())
                .toList();
        return briefs.stream()
                .flatMap(brief -> Stream.of(
                        Design.of(brief),
                        Design.of(brief).choosing(TRAIN),
                        Design.of(brief).choosing(TRAIN).drawing(drawn(Math.PI / 3, -1e-17)),
                        Design.of(brief).with(BriefDraft.of(brief).with("/run/atLeast", TextNode.valueOf("half typ"))),
                        Design.of(brief).with(BriefDraft.of(brief).without("/beat/pendulumLength"))));
    }

    @ParameterizedTest
    @MethodSource("designs")
    void a_saved_design_opens_as_it_was_typed_and_saves_to_the_same_bytes(Design design) throws IOException {
        Path file = folder.resolve("clock.drumfall");
        assertThat(DesignFile.save(file, design)).isEmpty();
        byte[] first = Files.readAllBytes(file);
        Design opened = DesignFile.open(file).accepted().orElseThrow();
        assertThat(opened).isEqualTo(design);
        assertThat(DesignFile.save(file, opened)).isEmpty();
        assertThat(Files.readAllBytes(file)).isEqualTo(first);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "''|OTHER_FORMAT",
                "{|NOT_JSON",
                "[]|OTHER_FORMAT",
                "null|OTHER_FORMAT",
                "{\"format\":\"drumfall-brief\",\"version\":2}|BRIEF_REFUSED",
                "{\"format\":\"drumfall-train\",\"version\":1}|OTHER_FORMAT",
                "{\"format\":\"drumfall-design\",\"version\":2}|NEWER",
                "{\"format\":\"drumfall-design\",\"version\":99999999999999999999}|NEWER",
                "{\"format\":\"drumfall-design\",\"version\":\"1\"}|OTHER_FORMAT",
                "{\"format\":\"drumfall-design\",\"version\":0}|OTHER_FORMAT",
                "{\"format\":\"drumfall-design\",\"version\":1}|OTHER_FORMAT",
                "{\"format\":\"drumfall-design\",\"version\":1,\"brief\":{},\"colour\":1}|OTHER_FORMAT",
                "{\"format\":\"drumfall-design\",\"version\":1,\"brief\":{}}|BRIEF_REFUSED",
                "{\"format\":\"drumfall-design\",\"format\":1}|NOT_JSON",
            })
    void what_is_no_design_is_refused_by_kind(String text, Kind kind) throws IOException {
        Path file = Files.writeString(folder.resolve("a.drumfall"), text);
        assertThat(kind(DesignFile.open(file))).isEqualTo(Optional.of(kind));
    }

    // Three meshes, numbered from 0 at the drum; 3 stands for the motion work.
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "/drawn|[]|At /drawn, []: drawn arbors are a train and a list of directions",
                "/drawn/directions/0|{}|At /drawn/directions/0, {}: a direction is a mesh and its radians",
                "/drawn/directions/1/mesh|4|At /drawn/directions/1/mesh, 4: a mesh is a number from 0 at the drum to 3",
                "/drawn/directions/1/mesh|0.5|At /drawn/directions/1/mesh, 0.5: a mesh is a number from 0",
                "/drawn/directions/1/mesh|1|At /drawn/directions/1/mesh, 1: each mesh is drawn once",
                "/drawn/directions/0/radians|\"up\"|At /drawn/directions/0/radians, \"up\": a direction is a finite number",
                "/drawn/directions/0/radians|1e999|At /drawn/directions/0/radians, 1E+999: a direction is a finite number",
                "/drawn/train/falls|0|In /drawn/train: At /falls"
            })
    void drawn_arbors_that_are_not_in_order_are_refused_with_their_place(String pointer, String value, String sentence)
            throws IOException {
        Design design = Design.of(BundledBriefs.demo()).choosing(TRAIN).drawing(drawn(1, 2));
        JsonMapper mapper = JsonMapper.builder()
                .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
                .build();
        ObjectNode tree = (ObjectNode) mapper.readTree(DesignText.write(design));
        JsonPointer at = JsonPointer.compile(pointer);
        JsonNode parent = tree.at(at.head());
        if (parent instanceof ArrayNode list) {
            list.set(at.last().getMatchingIndex(), mapper.readTree(value));
        } else {
            ((ObjectNode) parent).set(at.last().getMatchingProperty(), mapper.readTree(value));
        }

        DesignFault fault = DesignText.read(tree.toString(), "clock")
                .fold((opened, own) -> Optional.<DesignFault>empty(), Optional::of)
                .orElseThrow();

        assertThat(fault.kind()).isEqualTo(Kind.DRAWN_REFUSED);
        assertThat(fault.details().get(1)).startsWith(sentence);
    }

    @Test
    void arbors_drawn_in_one_train_say_nothing_of_another() {
        Design design = Design.of(BundledBriefs.demo()).choosing(TRAIN).drawing(drawn(1, 2));
        Train other = new Train(TRAIN.meshes(), 1, TRAIN.drumDiameter(), Reeving.SINGLE, 30);

        assertThat(design.drawnIn(TRAIN).directions()).hasSize(2);
        assertThat(design.choosing(other).drawnIn(other)).isEqualTo(Locks.NONE);
        assertThat(design.drawing(new DrawnArbors(TRAIN, List.of())).drawn()).isEmpty();
    }

    private static Optional<Kind> kind(DesignReading reading) {
        return reading.fold((design, own) -> Optional.empty(), fault -> Optional.of(fault.kind()));
    }

    @Test
    void files_that_cannot_be_read_are_refused_by_kind() throws IOException {
        assertThat(kind(DesignFile.open(folder.resolve("none")))).contains(Kind.MISSING);
        assertThat(kind(DesignFile.open(folder))).contains(Kind.UNREADABLE);
        Path latin = Files.write(folder.resolve("latin"), "{\"a\":\"\u00fc\"}".getBytes(StandardCharsets.ISO_8859_1));
        assertThat(kind(DesignFile.open(latin))).contains(Kind.NOT_TEXT);
        Path huge = Files.write(folder.resolve("huge"), new byte[4_000_001]);
        assertThat(kind(DesignFile.open(huge))).contains(Kind.TOO_LONG);
    }

    @Test
    void a_full_disk_leaves_the_earlier_file_whole() throws IOException {
        Path file = Files.writeString(folder.resolve("clock"), "earlier");
        Optional<DesignFault> fault = WholeFile.write(file, "later", (part, bytes) -> {
            Files.write(part, new byte[] {1});
            throw new IOException("No space left on device");
        });
        assertThat(fault.map(DesignFault::kind)).contains(Kind.FULL);
        assertThat(Files.readString(file)).isEqualTo("earlier");
        try (Stream<Path> left = Files.list(folder)) {
            assertThat(left).containsExactly(file);
        }
    }

    @Test
    void a_folder_that_is_not_there_is_said_to_be_missing() {
        assertThat(DesignFile.save(folder.resolve("no/clock"), Design.of(BundledBriefs.demo()))
                        .map(DesignFault::kind))
                .contains(Kind.NO_FOLDER);
    }

    @Test
    void what_must_not_be_written_is_said_to_be_read_only() {
        Path file = folder.resolve("clock");
        Optional<DesignFault> fault = WholeFile.write(file, "text", (part, bytes) -> {
            throw new java.nio.file.AccessDeniedException(part.toString());
        });
        assertThat(fault.map(DesignFault::kind)).contains(Kind.READ_ONLY);
    }

    @Test
    void a_link_stays_a_link_when_it_is_saved_over() throws IOException {
        Path real = Files.writeString(folder.resolve("real.drumfall"), "earlier");
        Path link = Files.createSymbolicLink(folder.resolve("link.drumfall"), real);
        assertThat(DesignFile.save(link, Design.of(BundledBriefs.demo()))).isEmpty();
        assertThat(Files.isSymbolicLink(link)).isTrue();
        assertThat(DesignFile.open(real).accepted()).isPresent();
    }

    @Test
    void a_held_file_is_held_once_and_free_again_afterwards() {
        Path file = folder.resolve("clock.drumfall");
        FileHold first = FileHold.on(file).orElseThrow();
        assertThat(FileHold.on(file)).isEmpty();
        assertThat(FileHold.on(folder.resolve("other.drumfall"))).isPresent();
        first.close();
        assertThat(FileHold.on(file)).isPresent();
    }

    /** Each mutation changes, removes or doubles a piece of a sound file's text; the seed names it. */
    @Test
    void mutated_files_open_or_are_refused_in_one_sentence_without_hanging() {
        boolean full = "full".equals(System.getProperty("drumfall.samples"));
        String sound = DesignText.write(Design.of(BundledBriefs.demo()).choosing(TRAIN));
        Assertions.assertTimeoutPreemptively(Duration.ofMinutes(10), () -> {
            for (int seed = 0; seed < (full ? 10_000 : 200); seed++) {
                Path file = folder.resolve("mutated.drumfall");
                Files.write(file, mutated(sound, new Random(seed)));
                DesignReading reading = DesignFile.open(file);
                int number = seed;
                reading.fold(
                        (design, own) -> assertThat(DesignText.read(DesignText.write(design), "again")
                                        .accepted())
                                .as("seed %d", number)
                                .contains(design),
                        fault -> assertThat(fault.details())
                                .as("seed %d", number)
                                .allSatisfy(detail -> assertThat(detail).doesNotContain("Exception", "\n")));
            }
        });
    }

    private static byte[] mutated(String sound, Random random) {
        StringBuilder text = new StringBuilder(sound);
        int changes = 1 + random.nextInt(3);
        for (int i = 0; i < changes; i++) {
            int from = random.nextInt(text.length());
            int to = Math.min(text.length(), from + 1 + random.nextInt(random.nextInt(5) == 0 ? 400 : 6));
            switch (random.nextInt(5)) {
                case 0 -> text.delete(from, to);
                case 1 -> text.insert(from, text.substring(from, to));
                case 2 -> text.setCharAt(from, (char) random.nextInt(256));
                case 3 -> text.insert(from, "{\"[]},:0123456789-eE.\u0000\ud83d".charAt(random.nextInt(22)));
                default -> text.setLength(from);
            }
            if (text.isEmpty()) {
                break;
            }
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }
}
