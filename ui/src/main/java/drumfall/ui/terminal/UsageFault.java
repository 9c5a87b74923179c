// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import java.util.List;
import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Says in one sentence what is wrong with a command line, and where its help is. */
final class UsageFault {
    private UsageFault() {}

    static int report(ParameterException fault, TerminalPlace place) {
        String command = fault.getCommandLine().getCommandSpec().qualifiedName();
        place.err().println(sentence(fault) + " " + Phrases.phrase("usage.help", command));
        return ExitCode.BAD_INPUT.number();
    }

    private static String sentence(ParameterException fault) {
        if (fault instanceof UnmatchedArgumentException unmatched) {
            return unknown(unmatched);
        }
        if (fault instanceof MissingParameterException missing) {
            return Phrases.phrase("usage.missing", names(missing.getMissing()));
        }
        if (fault instanceof OverwrittenOptionException twice) {
            return Phrases.phrase("usage.twice", name(twice.getOverwritten()));
        }
        String message = fault.getMessage();
        return message.endsWith(".") ? message : message + ".";
    }

    private static String unknown(UnmatchedArgumentException fault) {
        String argument = fault.getUnmatched().get(0);
        List<String> nearest = fault.getSuggestions();
        String key = fault.isUnknownOption() ? "usage.option" : "usage.word";
        String sentence = Phrases.phrase(key, argument);
        return nearest.isEmpty() ? sentence : sentence + " " + Phrases.phrase("usage.nearest", nearest.get(0));
    }

    private static String names(List<ArgSpec> missing) {
        return missing.stream().map(UsageFault::name).collect(Collectors.joining(", "));
    }

    private static String name(ArgSpec argument) {
        return argument.isOption()
                ? ((CommandLine.Model.OptionSpec) argument).longestName() + " " + argument.paramLabel()
                : argument.paramLabel();
    }
}
