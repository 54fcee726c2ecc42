package hearthcloth.cli.help;

import hearthcloth.words.helping.HelpingWords;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** What is said of each option and of what stands without one. Words of one command come before those that several share. */
final class OptionWords {

    private static final Pattern NAMED = Pattern.compile("([A-Z]{2,})(\\.[a-z]+)?");

    private final HelpingWords w;

    OptionWords(HelpingWords w) {
        this.w = w;
    }

    /** What the option is for. */
    String of(OptionSpec option) {
        String name = option.longestName();
        String own = own(option, name);
        String said = own == null ? shared(name, option) : own;
        return said == null ? wish(name) : said;
    }

    /** What is to stand in its place. */
    String of(PositionalParamSpec parameter) {
        return switch (parameter.command().name()) {
            case "help" -> w.helpWhich();
            case "plan", "kits" -> w.optionStash();
            case "read" -> w.readPhoto();
            case "guideline" -> w.guidelineCloth();
            case "idea" -> w.ideaFile();
            case "completion" -> w.completionKind();
            default ->
                throw new IllegalStateException(
                        "nothing is said of " + parameter.command().name());
        };
    }

    /** What is put after an option or in a place: {@code LENGTH}, in the reader's words; words to type stay as they are. */
    String label(ArgSpec arg) {
        return Stream.of(arg.paramLabel().split("\\|", -1)).map(this::label).collect(Collectors.joining("|"));
    }

    private String label(String part) {
        Matcher named = NAMED.matcher(part);
        return named.matches()
                ? w.label(named.group(1)) + Optional.ofNullable(named.group(2)).orElse("")
                : part;
    }

    private @Nullable String own(OptionSpec option, String name) {
        return switch (option.command().name()) {
            case "hearthcloth" -> program(name, option.defaultValueString());
            case "plan" -> plan(name);
            case "kits" -> kits(name);
            case "read" -> read(name);
            case "size" -> size(name);
            case "guideline" -> guideline(name);
            case "idea" -> idea(name);
            case "sheet" -> sheet(name);
            default -> null;
        };
    }

    private @Nullable String program(String name, String usual) {
        return switch (name) {
            case "--port" -> w.mainPort(usual);
            case "--data" -> w.mainData();
            case "--restore" -> w.mainRestore();
            case "--lan" -> w.mainLan();
            case "--new" -> w.mainNew();
            case "--code" -> w.mainCode();
            case "--address" -> w.mainAddress();
            case "--no-browser" -> w.mainNoBrowser();
            case "--language" -> w.mainLanguage();
            default -> null;
        };
    }

    private @Nullable String plan(String name) {
        return switch (name) {
            case "--png" -> w.planPng();
            case "--net" -> w.planNet();
            case "--slips" -> w.planSlips();
            case "--guideline" -> w.planGuideline();
            case "--favourite" -> w.planFavourite();
            case "--like" -> w.planLike();
            default -> null;
        };
    }

    private @Nullable String kits(String name) {
        return switch (name) {
            case "--wishes" -> w.kitsWishes();
            case "--students" -> w.kitsStudents();
            default -> null;
        };
    }

    private @Nullable String read(String name) {
        return switch (name) {
            case "--sheet" -> w.readSheet();
            case "--out" -> w.readOut();
            case "--picture" -> w.readPicture();
            case "--unit" -> w.readUnit();
            case "--keep-doubtful" -> w.readKeepDoubtful();
            default -> null;
        };
    }

    private @Nullable String size(String name) {
        return switch (name) {
            case "--cloth" -> w.sizeCloth();
            case "--steps" -> w.sizeSteps();
            default -> null;
        };
    }

    private @Nullable String guideline(String name) {
        return switch (name) {
            case "--out" -> w.optionFile();
            case "--name" -> w.guidelineName();
            case "--by" -> w.guidelineBy();
            case "--words" -> w.guidelineWords();
            case "--picture" -> w.guidelinePicture();
            case "--size" -> w.guidelineSize();
            case "--hearth" -> w.guidelineHearth();
            case "--bars" -> w.guidelineBars();
            case "--rounds" -> w.guidelineRounds();
            case "--order" -> w.guidelineOrder();
            case "--colours" -> w.guidelineColours();
            case "--middle" -> w.guidelineMiddle();
            case "--most-joins" -> w.guidelineMostJoins();
            case "--unit" -> w.guidelineUnit();
            default -> null;
        };
    }

    private @Nullable String idea(String name) {
        return switch (name) {
            case "--out" -> w.optionFile();
            case "--from" -> w.ideaFrom();
            default -> null;
        };
    }

    private @Nullable String sheet(String name) {
        return switch (name) {
            case "--out" -> w.optionFile();
            case "--paper" -> w.sheetPaper();
            default -> null;
        };
    }

    private @Nullable String shared(String name, OptionSpec option) {
        return switch (name) {
            case "--help" -> w.optionHelp();
            case "--version" -> w.optionVersion();
            case "--replace" -> w.optionReplace();
            case "--out" -> w.optionFolder();
            case "--json" -> w.optionJson();
            case "--unit" -> w.optionUnit();
            case "--guide" -> w.optionGuide(option.defaultValueString());
            case "--paper" -> w.optionPaper();
            case "--language" -> w.optionLanguage();
            case "--budget" -> w.optionBudget(option.defaultValueString());
            case "--gift" -> w.optionGift();
            case "--tie" -> w.optionTie();
            default -> null;
        };
    }

    private String wish(String name) {
        String form = form(name);
        String scraps = form == null ? scraps(name) : form;
        String sewing = scraps == null ? sewing(name) : scraps;
        String looks = sewing == null ? looks(name) : sewing;
        if (looks == null) {
            throw new IllegalStateException("nothing is said of " + name);
        }
        return looks;
    }

    private @Nullable String form(String name) {
        return switch (name) {
            case "--slack" -> w.wishSlack();
            case "--outside" -> w.wishOutside();
            case "--turned" -> w.wishTurned();
            case "--off-middle" -> w.wishOffMiddle();
            case "--show" -> w.wishShow();
            case "--size" -> w.wishSize();
            case "--hearth" -> w.wishHearth();
            case "--bars" -> w.wishBars();
            case "--rounds" -> w.wishRounds();
            case "--order" -> w.wishOrder();
            case "--blocks" -> w.wishBlocks();
            case "--setting" -> w.wishSetting();
            default -> null;
        };
    }

    private @Nullable String scraps(String name) {
        return switch (name) {
            case "--free" -> w.wishFree();
            case "--scraps" -> w.wishScraps();
            case "--with" -> w.wishWith();
            case "--middle" -> w.wishMiddle();
            case "--most-trim" -> w.wishMostTrim();
            case "--sizes" -> w.wishSizes();
            case "--bands" -> w.wishBands();
            default -> null;
        };
    }

    private @Nullable String sewing(String name) {
        return switch (name) {
            case "--seam" -> w.wishSeam();
            case "--hem" -> w.wishHem();
            case "--corner" -> w.wishCorner();
            case "--fell" -> w.wishFell();
            case "--leeway" -> w.wishLeeway();
            case "--trim" -> w.wishTrim();
            case "--least-piece" -> w.wishLeastPiece();
            case "--clearance" -> w.wishClearance();
            case "--most-joins" -> w.wishMostJoins();
            default -> null;
        };
    }

    private @Nullable String looks(String name) {
        return switch (name) {
            case "--scheme" -> w.wishScheme();
            case "--contrast" -> w.wishContrast();
            case "--fabrics" -> w.wishFabrics();
            case "--proposals" -> w.wishProposals();
            case "--seed" -> w.wishSeed();
            default -> null;
        };
    }
}
