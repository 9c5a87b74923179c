/**
 * A trial bench for exporters: a handover to export and a folder in memory, for the tests of a plugin.
 *
 * <p>A brief has some seventy figures; nobody should have to write one down to test ten lines of an exporter. May depend
 * on the api and the solver. Not visible to plugins in the running program. Rejected: a separate jar, which would be one
 * more thing to fetch before the first test runs.
 *
 * @since 1.0
 */
package drumfall.plugin.api.trial;
