package hearthcloth.cli;

import hearthcloth.cli.help.HelpPage;
import hearthcloth.wish.BadInputException;
import hearthcloth.wish.ListWords;
import hearthcloth.words.Language;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.words.sentence.TypingSentences;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** What is said of words that no command or option has, or that one of them lacks. */
final class Mistyped {

    private static final int SHOWN = 200;

    private Mistyped() {}

    /** What is wrong, and where it is told how to write it. */
    static BadInputException said(ParameterException trouble, Language language) {
        String command = trouble.getCommandLine().getCommandSpec().qualifiedName();
        return new BadInputException(
                sentence(trouble, language), TypingSentences.shown(Argument.text(command + " --help")));
    }

    private static Sentence sentence(ParameterException trouble, Language language) {
        if (trouble instanceof UnmatchedArgumentException unknown) {
            return unmatched(unknown);
        }
        if (trouble instanceof MissingParameterException missing) {
            return TypingSentences.missing(Argument.names(
                    Argument.Joined.COMMAS,
                    missing.getMissing().stream()
                            .map(arg -> named(arg, language))
                            .toList()));
        }
        if (trouble instanceof OverwrittenOptionException twice) {
            return TypingSentences.optionTwice(Argument.text(name(twice.getOverwritten())));
        }
        if (trouble.getArgSpec() instanceof OptionSpec option && trouble.getValue() != null) {
            return TypingSentences.optionNoValue(
                    Argument.text(option.longestName()), Argument.text(shortened(trouble.getValue())));
        }
        return TypingSentences.unread(Argument.text(shortened(String.valueOf(trouble.getMessage()))));
    }

    private static Sentence unmatched(UnmatchedArgumentException unknown) {
        String what = unknown.getUnmatched().get(0);
        if (unknown.isUnknownOption()) {
            return TypingSentences.optionUnknown(Argument.text(shortened(what)));
        }
        return unknown.getCommandLine().getParent() == null
                ? HelpCommand.unknown(shortened(what), unknown.getCommandLine())
                : TypingSentences.wordTooMany(Argument.text(shortened(what)));
    }

    private static String named(ArgSpec arg, Language language) {
        String label = HelpPage.label(arg, language);
        return arg instanceof OptionSpec option ? option.longestName() + " " + label : label;
    }

    private static String name(ArgSpec arg) {
        return arg instanceof OptionSpec option ? option.longestName() : arg.paramLabel();
    }

    /** The beginning of what was typed, in which nothing moves the cursor. */
    static String shortened(String text) {
        String plain = ListWords.plain(text);
        return plain.length() > SHOWN ? plain.substring(0, SHOWN) + "…" : plain;
    }
}
