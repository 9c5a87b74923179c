// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.api;

import drumfall.plugin.api.Stability.Level;
import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.Quantity;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/**
 * One thing that the maker may set about an export, beside what the brief says; an exporter keeps each as a constant, names
 * it in {@link Exporter#settings()} and asks {@link SettingValues#of} for its value.
 *
 * @param <T> of its values
 * @since 1.1
 */
@Stability(level = Level.STABLE, since = "1.1")
public sealed interface ExportSetting<T> {
    /** Names it for the terminal and for what is remembered: written like an exporter's id. */
    String id();

    /** Names it for people: one line of 1 to 60 characters. */
    String title();

    /** Says what it does: one sentence of at most 200 characters. */
    String help();

    /** The value where the maker sets none. */
    T usual();

    /**
     * Whether a value keeps the bounds.
     *
     * @param value never {@code null}
     */
    boolean allows(T value);

    /**
     * A length.
     *
     * @param id as for every setting
     * @param title as for every setting
     * @param help as for every setting
     * @param usual from {@code least} to {@code most}
     * @param least the smallest that is allowed
     * @param most the largest that is allowed
     * @since 1.1
     */
    record Length(String id, String title, String help, Quantity usual, Quantity least, Quantity most)
            implements ExportSetting<Quantity> {
        /**
         * Checks the declaration.
         *
         * @throws IllegalArgumentException if a text breaks its rule, a bound is no length or the usual value is out of bounds
         */
        public Length {
            SettingRules.requireTexts(id, title, help);
            SettingRules.require(least.dimension() == Dimension.LENGTH, id, "least value", least, "be a length");
            SettingRules.requireUsual(
                    id, usual, allowed(usual, least, most), "be a length from " + least + " to " + most);
        }

        @Override
        public boolean allows(Quantity value) {
            return allowed(value, least, most);
        }

        private static boolean allowed(Quantity value, Quantity least, Quantity most) {
            return value.dimension() == least.dimension()
                    && most.dimension() == least.dimension()
                    && value.compareTo(least) >= 0
                    && value.compareTo(most) <= 0;
        }
    }

    /**
     * A whole number.
     *
     * @param id as for every setting
     * @param title as for every setting
     * @param help as for every setting
     * @param usual from {@code least} to {@code most}
     * @param least the smallest that is allowed
     * @param most the largest that is allowed
     * @since 1.1
     */
    record Count(String id, String title, String help, Integer usual, int least, int most)
            implements ExportSetting<Integer> {
        /**
         * Checks the declaration.
         *
         * @throws IllegalArgumentException if a text breaks its rule or the usual value is out of bounds
         */
        public Count {
            SettingRules.requireTexts(id, title, help);
            SettingRules.requireUsual(id, usual, usual >= least && usual <= most, "be from " + least + " to " + most);
        }

        @Override
        public boolean allows(Integer value) {
            return value >= least && value <= most;
        }
    }

    /**
     * One of some values.
     *
     * @param id as for every setting
     * @param title as for every setting
     * @param help as for every setting
     * @param usual the id of one of the values
     * @param values two or more, with different ids
     * @since 1.1
     */
    record Choice(String id, String title, String help, String usual, List<Value> values)
            implements ExportSetting<String> {
        /**
         * Checks the declaration.
         *
         * @throws IllegalArgumentException if a text breaks its rule, there are too few values or two alike, or the usual one is
         *     not among them
         */
        public Choice {
            SettingRules.requireTexts(id, title, help);
            values = List.copyOf(values);
            Set<String> ids = new HashSet<>();
            for (Value value : values) {
                SettingRules.require(ids.add(value.id()), id, "value", value.id(), "be listed once");
            }
            SettingRules.require(values.size() > 1, id, "number of values", values.size(), "be at least 2");
            SettingRules.requireUsual(id, usual, ids.contains(usual), "be one of its values");
        }

        @Override
        public boolean allows(String value) {
            return values.stream().anyMatch(allowed -> allowed.id().equals(value));
        }

        /**
         * A value to choose.
         *
         * @param id what is typed and handed over: written like an exporter's id, but it may begin with a digit
         * @param title for people: one line of 1 to 60 characters
         * @since 1.1
         */
        public record Value(String id, String title) {
            /**
             * Checks the texts.
             *
             * @throws IllegalArgumentException if one breaks its rule
             */
            public Value {
                SettingRules.requireValue(id, title);
            }
        }
    }

    /**
     * Something that is done or left.
     *
     * @param id as for every setting
     * @param title as for every setting
     * @param help as for every setting
     * @param usual whether it is done where the maker does not say
     * @since 1.1
     */
    record YesNo(String id, String title, String help, Boolean usual) implements ExportSetting<Boolean> {
        /**
         * Checks the declaration.
         *
         * @throws IllegalArgumentException if a text breaks its rule
         */
        public YesNo {
            SettingRules.requireTexts(id, title, help);
            Objects.requireNonNull(usual, "usual");
        }

        @Override
        public boolean allows(Boolean value) {
            return true;
        }
    }

    /**
     * A line of text.
     *
     * @param id as for every setting
     * @param title as for every setting
     * @param help as for every setting
     * @param usual at most {@code longest} characters, none of them a control character; may be empty
     * @param longest characters allowed, 1 to 1000
     * @since 1.1
     */
    record Text(String id, String title, String help, String usual, int longest) implements ExportSetting<String> {
        /**
         * Checks the declaration.
         *
         * @throws IllegalArgumentException if a text breaks its rule or {@code longest} is out of bounds
         */
        public Text {
            SettingRules.requireTexts(id, title, help);
            SettingRules.require(longest >= 1 && longest <= 1000, id, "longest text", longest, "be from 1 to 1000");
            SettingRules.requireUsual(
                    id,
                    usual,
                    SettingRules.isLine(usual, longest),
                    "be one line of at most " + longest + " characters");
        }

        @Override
        public boolean allows(String value) {
            return SettingRules.isLine(value, longest);
        }
    }
}
