// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.solver.brief.BundledBriefs;
import drumfall.solver.rating.Demand;
import drumfall.ui.design.DesignFault;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class TextsTest {
    private static final Path SOURCES = Path.of("src/main/java/drumfall/ui");
    private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\]|\\\\.)*)\"");
    private static final Pattern USE = Pattern.compile("Texts\\.of\\(\\s*\"([^\"]+)\"(\\s*\\+)?");

    private static String sources() throws IOException {
        try (Stream<Path> presenters = Files.walk(SOURCES.resolve("presenter"));
                Stream<Path> views = Files.walk(SOURCES.resolve("view"))) {
            return Stream.concat(presenters, views)
                    .filter(file -> file.toString().endsWith(".java"))
                    .map(TextsTest::read)
                    .collect(Collectors.joining("\n"));
        }
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException fault) {
            throw new java.io.UncheckedIOException(fault);
        }
    }

    @Test
    void every_key_that_is_asked_for_is_there() throws IOException {
        Matcher uses = USE.matcher(sources());
        Set<String> missing = new TreeSet<>();
        while (uses.find()) {
            boolean beginning = uses.group(2) != null;
            boolean there = beginning
                    ? Texts.keys().stream().anyMatch(key -> key.startsWith(uses.group(1)))
                    : Texts.has(uses.group(1));
            if (!there) {
                missing.add(uses.group(1));
            }
        }
        assertThat(missing).isEmpty();
    }

    @Test
    void every_key_that_is_there_is_asked_for() throws IOException {
        Set<String> literals = LITERAL.matcher(sources())
                .results()
                .map(found -> found.group(1))
                .collect(Collectors.toSet());
        Set<String> unused = Texts.keys().stream()
                .filter(key -> literals.stream().noneMatch(literal -> asks(literal, key)))
                .collect(Collectors.toCollection(TreeSet::new));
        assertThat(unused).isEmpty();
    }

    /** A key is asked for whole, by its beginning with the rest computed, or as a command whose parts are computed. */
    private static boolean asks(String literal, String key) {
        boolean beginning = literal.endsWith(".") && literal.length() > 2 && key.startsWith(literal);
        boolean variant = !literal.isEmpty() && (key.equals(literal + ".one") || key.equals(literal + ".next"));
        return key.equals(literal) || beginning || variant || (literal.equals("field") && key.startsWith("field."));
    }

    @Test
    void everything_that_is_counted_off_has_its_words() {
        Stream.of(Demand.values())
                .forEach(demand -> assertThat(DemandMarks.name(demand)).isNotBlank());
        Stream.of(DesignFault.Kind.values())
                .forEach(kind -> assertThat(Texts.has("fault." + kind.name()))
                        .as(kind.name())
                        .isTrue());
        Stream.of(FrontColumn.values())
                .forEach(column -> assertThat(column.title()).isNotBlank());
        Stream.of(Figure.values()).forEach(figure -> assertThat(figure.title()).isNotBlank());
        BundledBriefs.names()
                .forEach(name -> assertThat(Texts.has("brief." + name)).as(name).isTrue());
        BriefSheet.groups().forEach(group -> assertThat(group.heading()).isNotBlank());
        BriefSheet.rows()
                .forEach(row -> row.lines().forEach(line -> {
                    assertThat(row.label(line)).isNotBlank();
                    line.choices()
                            .forEach(word -> assertThat(Texts.has("choice." + word))
                                    .as(word)
                                    .isTrue());
                }));
    }

    @Test
    void values_are_put_in_as_they_are() {
        assertThat(Texts.of("trial.count", "1e9", 2, 1000))
                .isEqualTo("\"1e9\" cannot be tried; type a whole number from 2 to 1000.");
    }
}
