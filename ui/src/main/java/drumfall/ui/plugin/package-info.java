/**
 * The plugin host: finds jars, loads the exporters in them, and lets them export, whatever they do.
 *
 * <p>{@link drumfall.ui.plugin.PluginHost} is the way in; everything it answers is a record. Each jar has a class loader
 * of its own whose parent shows the plugin api, the solver's records and the JDK, so that a plugin brings its own
 * libraries in its jar and can neither meet nor break the program's. What a jar asks for is read from its manifest before
 * its code runs. Plugin code runs on threads of its own; what it throws is kept as text. An export is staged beside its
 * place and moved in when it is complete. What can be set about an export is declared by the plugin and checked here, before
 * its code runs; the values stand in the list of files.
 *
 * <p><b>What cannot be contained.</b> A plugin runs in the program's own process with the user's rights. Java has no
 * sandbox any more that would keep it from ending the process, starting others, reading or writing any file by an absolute
 * path, printing, changing system properties, or taking all memory or a processor for itself. A thread that is out of time
 * cannot be ended, only left behind with its folder closed. A write past the folder is noticed where it lands in the
 * folder exported to, in an earlier export or, as a new entry, in the working folder, and the export is then discarded; hidden entries are not
 * looked at; elsewhere, or after
 * the export has ended, it goes unnoticed. The user should install only plugins from people he trusts.
 *
 * <p>May depend on the plugin api, the quantities in which lengths are typed, and the JDK; no Swing. Rejected: exporting in a process of its own, which would contain
 * all of this, but starts a second Java for every export and needs a copy of every record over a pipe; and a module layer
 * for each jar, which asks for a module path that a plain folder of jars does not have.
 */
package drumfall.ui.plugin;
