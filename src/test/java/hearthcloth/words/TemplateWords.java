package hearthcloth.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Finds the words that a template says itself instead of taking them from a catalogue: text between tags, attributes that
 * are shown or spoken, and texts in expressions at either place.
 */
final class TemplateWords {

    private static final Set<String> SAID = Set.of("aria-label", "title", "placeholder", "alt", "data-ask");
    private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\]|\\\\.)*)\"");

    /** A text in an expression that is not shown at once: several words, or one that begins with a capital. */
    private static final Pattern SENTENCE = Pattern.compile(".*[a-z]{2,} [a-z].*|[A-Z][a-z]+");

    /** Letters that are no word: entities, and names that are the same in every language. */
    private static final Pattern NO_WORDS = Pattern.compile("&#?\\w+;|Hearthcloth|PNG|JPEG|SVG|CSV|A4|\\bR\\b|\\bU\\b");

    private final String template;
    private final List<String> bare = new ArrayList<>();
    private final StringBuilder text = new StringBuilder();
    private int at;

    private TemplateWords(String template) {
        this.template = template;
    }

    /** What is said by the template itself, in its order. */
    static List<String> bare(String template) {
        TemplateWords words = new TemplateWords(
                template.replaceAll("(?s)<%--.*?--%>|<!--.*?-->", " ").replaceAll("(?m)^@(?:import|param) .*$", ""));
        words.content(false);
        words.told();
        return List.copyOf(words.bare);
    }

    /** Text and tags, up to the end or to the mark that closes content. */
    private void content(boolean closes) {
        while (at < template.length()) {
            char sign = template.charAt(at);
            if (closes && sign == '`') {
                told();
                return;
            } else if (sign == '<' && at + 1 < template.length() && isTag(template.charAt(at + 1))) {
                told();
                tag();
            } else if (!jte(true)) {
                text.append(sign);
                at++;
            }
        }
    }

    private static boolean isTag(char next) {
        return next == '/' || next == '!' || Character.isLetter(next);
    }

    /** What has gathered between tags. */
    private void told() {
        keep(text.toString());
        text.setLength(0);
    }

    private void keep(String said) {
        String plain = said.replaceAll("\\s+", " ").strip();
        if (NO_WORDS.matcher(plain).replaceAll(" ").matches("(?s).*\\p{L}.*")) {
            bare.add(plain);
        }
    }

    /** Takes an expression or a control of jte; false where none begins here. */
    private boolean jte(boolean isShown) {
        if (template.startsWith("${", at) || template.startsWith("$unsafe{", at)) {
            literals(braces(), isShown);
            text.append(' ');
        } else if (template.startsWith("!{", at)) {
            literals(braces(), false);
        } else if (template.startsWith("@template.", at)) {
            at = template.indexOf('(', at) + 1;
            arguments();
        } else if (template.startsWith("@if(", at)
                || template.startsWith("@elseif(", at)
                || template.startsWith("@for(", at)) {
            at = template.indexOf('(', at);
            balanced('(', ')');
        } else if (template.startsWith("@end", at) || template.startsWith("@else", at)) {
            at++;
            while (at < template.length() && Character.isLetter(template.charAt(at))) {
                at++;
            }
        } else {
            return false;
        }
        return true;
    }

    private String braces() {
        at = template.indexOf('{', at);
        return balanced('{', '}');
    }

    /** From one bracket to the one that closes it, texts left alone. */
    private String balanced(char open, char close) {
        int from = at;
        int deep = 0;
        do {
            char sign = template.charAt(at);
            if (sign == '"') {
                Matcher literal = LITERAL.matcher(template).region(at, template.length());
                at = literal.lookingAt() ? literal.end() : at + 1;
                continue;
            }
            deep += sign == open ? 1 : sign == close ? -1 : 0;
            at++;
        } while (deep > 0 && at < template.length());
        return template.substring(from, at);
    }

    private void literals(String expression, boolean isShown) {
        Matcher literals = LITERAL.matcher(expression);
        while (literals.find()) {
            boolean isArgument =
                    expression.substring(0, literals.start()).matches("(?s).*\\bw?\\.?(?:\\w+\\(|equals\\()$");
            if ((isShown && !isArgument) || SENTENCE.matcher(literals.group(1)).matches()) {
                keep(literals.group(1));
            }
        }
    }

    /** What a template is given: content is looked into, everything else is an expression. */
    private void arguments() {
        StringBuilder expression = new StringBuilder();
        int deep = 1;
        while (deep > 0 && at < template.length()) {
            char sign = template.charAt(at);
            if (template.startsWith("@`", at)) {
                at += 2;
                content(true);
                at++;
                continue;
            }
            if (sign == '"') {
                Matcher literal = LITERAL.matcher(template).region(at, template.length());
                at = literal.lookingAt() ? literal.end() : at + 1;
                expression.append(literal.group());
                continue;
            }
            deep += sign == '(' ? 1 : sign == ')' ? -1 : 0;
            expression.append(sign);
            at++;
        }
        literals(expression.toString(), false);
    }

    /** A tag: of its attributes only those that are shown or spoken are looked into. */
    private void tag() {
        at++;
        while (at < template.length() && template.charAt(at) != '>') {
            Matcher attribute =
                    Pattern.compile("([\\w:-]+)=\"").matcher(template).region(at, template.length());
            if (attribute.lookingAt()) {
                at = attribute.end();
                value(SAID.contains(attribute.group(1)));
            } else {
                at++;
            }
        }
        at++;
    }

    /** The value of an attribute, up to its closing sign. */
    private void value(boolean isSaid) {
        int kept = bare.size();
        while (at < template.length() && template.charAt(at) != '"') {
            if (!jte(isSaid)) {
                text.append(template.charAt(at++));
            }
        }
        at++;
        if (isSaid) {
            told();
        } else {
            text.setLength(0);
            bare.subList(kept, bare.size()).clear();
        }
    }
}
