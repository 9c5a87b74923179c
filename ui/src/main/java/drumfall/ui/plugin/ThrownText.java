// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.plugin;

import drumfall.plugin.api.RefusedExportException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.ServiceConfigurationError;

/**
 * What is kept of something a plugin threw: text only, so that nothing of the plugin stays in hand.
 *
 * @param refused whether it is an exporter's own refusal
 * @param linkage whether a class was missing or did not fit
 * @param summary class and message; of a refusal its sentence
 * @param detail the stack trace, cut
 */
record ThrownText(boolean refused, boolean linkage, String summary, String detail) {
    private static final int LONGEST_DETAIL = 4000;
    private static final int DEEPEST_CAUSE = 20;

    /** For when nothing could be learnt, made beforehand because memory may be gone by then. */
    static final ThrownText UNKNOWN = new ThrownText(false, false, "an error that could not be read", "");

    /**
     * Reads a throwable; its methods are the plugin's own code, so this is called on the plugin's thread.
     *
     * @param thrown anything
     */
    static ThrownText of(Throwable thrown) {
        Throwable cause = unwrapped(thrown);
        return isRefusal(cause)
                ? new ThrownText(true, false, FaultText.oneLine(cause.getMessage()), detail(cause))
                : new ThrownText(false, isLinkage(cause), summary(cause), detail(cause));
    }

    private static boolean isRefusal(Throwable thrown) {
        return thrown instanceof RefusedExportException
                && thrown.getMessage() != null
                && !thrown.getMessage().isBlank();
    }

    private static Throwable unwrapped(Throwable thrown) {
        Throwable cause = thrown;
        for (int i = 0; i < DEEPEST_CAUSE && isWrapper(cause) && cause.getCause() != null; i++) {
            cause = cause.getCause();
        }
        return cause;
    }

    private static boolean isWrapper(Throwable thrown) {
        return thrown instanceof ServiceConfigurationError || thrown instanceof ExceptionInInitializerError;
    }

    /** A service loader that finds no class, or one of the wrong type, says so without a cause. */
    private static boolean isLinkage(Throwable thrown) {
        return thrown instanceof LinkageError
                || thrown instanceof ClassNotFoundException
                || thrown instanceof ServiceConfigurationError;
    }

    /** Ends without a full stop, since it stands within a sentence. */
    private static String summary(Throwable thrown) {
        String type = thrown.getClass().getName().replaceFirst("^(java|drumfall)\\.([a-z]+\\.)+", "");
        try {
            String message = thrown.getMessage();
            return message == null || message.isBlank()
                    ? type
                    : type + ", " + FaultText.oneLine(message).replaceFirst("\\.$", "");
        } catch (Throwable inMessage) {
            return type;
        }
    }

    private static String detail(Throwable thrown) {
        try {
            StringWriter lines = new StringWriter();
            thrown.printStackTrace(new PrintWriter(lines));
            return lines.getBuffer().substring(0, Math.min(lines.getBuffer().length(), LONGEST_DETAIL));
        } catch (Throwable inTrace) {
            return "";
        }
    }
}
