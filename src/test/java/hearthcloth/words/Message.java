package hearthcloth.words;

import com.ibm.icu.text.MessagePattern;
import com.ibm.icu.text.MessagePattern.ArgType;
import com.ibm.icu.text.MessagePattern.Part;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** One message of a catalogue, read by ICU's own reader of its format. */
record Message(String key, String pattern, List<Node> nodes) {

    /** A stretch of a message. */
    sealed interface Node {
        /** Words that stand as they are. */
        record Text(String words) implements Node {}

        /** The value of an argument; where a plural counts, its number. */
        record Value(String name) implements Node {}

        /** One of several wordings, by a number or by a word. */
        record Choice(String name, boolean counts, Map<String, List<Node>> cases) implements Node {}
    }

    /** What the type of an argument is in Java. */
    enum Kind {
        TEXT("String"),
        WORD("String"),
        COUNT("int");

        final String java;

        Kind(String java) {
            this.java = java;
        }
    }

    static Message read(String key, String pattern) {
        MessagePattern parsed = new MessagePattern(pattern);
        return new Message(key, pattern, new Reading(parsed).nodes());
    }

    /** The arguments in the order in which their names are sorted, so that every language has the same. */
    Map<String, Kind> arguments() {
        Map<String, Kind> found = new TreeMap<>();
        gather(nodes, found);
        return found;
    }

    private static void gather(List<Node> nodes, Map<String, Kind> found) {
        for (Node node : nodes) {
            if (node instanceof Node.Value value) {
                found.putIfAbsent(value.name(), Kind.TEXT);
            } else if (node instanceof Node.Choice choice) {
                found.put(choice.name(), choice.counts() ? Kind.COUNT : Kind.WORD);
                choice.cases().values().forEach(each -> gather(each, found));
            }
        }
    }

    /** The name of the method: {@code knot.first} is {@code knotFirst}. */
    String method() {
        StringBuilder name = new StringBuilder();
        for (String part : key.split("\\.", -1)) {
            name.append(
                    name.isEmpty()
                            ? part
                            : part.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + part.substring(1));
        }
        return name.toString();
    }

    /** Walks through the parts. Only plain arguments, plurals without offset, and selects are allowed. */
    private static final class Reading {

        private final MessagePattern parts;
        private int at = 1;

        Reading(MessagePattern parts) {
            this.parts = parts;
        }

        List<Node> nodes() {
            return message(parts.getPart(0), "");
        }

        private List<Node> message(Part start, String counted) {
            List<Node> nodes = new ArrayList<>();
            int from = start.getLimit();
            while (true) {
                Part part = parts.getPart(at);
                if (part.getIndex() > from) {
                    nodes.add(new Node.Text(parts.getPatternString().substring(from, part.getIndex())));
                }
                at++;
                switch (part.getType()) {
                    case MSG_LIMIT -> {
                        return joined(nodes);
                    }
                    case ARG_START -> nodes.add(argument(part));
                    case REPLACE_NUMBER -> nodes.add(new Node.Value(counted));
                    case SKIP_SYNTAX, INSERT_CHAR -> {}
                    default -> throw new IllegalStateException("cannot read " + part.getType());
                }
                from = part.getType() == Part.Type.ARG_START
                        ? parts.getPart(at - 1).getLimit()
                        : part.getLimit();
            }
        }

        /** Texts that an apostrophe parts are one. */
        private static List<Node> joined(List<Node> nodes) {
            List<Node> joined = new ArrayList<>();
            for (Node node : nodes) {
                int last = joined.size() - 1;
                if (last >= 0 && node instanceof Node.Text text && joined.get(last) instanceof Node.Text before) {
                    joined.set(last, new Node.Text(before.words() + text.words()));
                } else {
                    joined.add(node);
                }
            }
            return List.copyOf(joined);
        }

        private Node argument(Part start) {
            ArgType type = start.getArgType();
            String name = parts.getSubstring(parts.getPart(at++));
            Map<String, List<Node>> cases = new LinkedHashMap<>();
            if (type != ArgType.NONE && type != ArgType.PLURAL && type != ArgType.SELECT) {
                throw new IllegalStateException("an argument of type " + type);
            }
            while (parts.getPart(at).getType() != Part.Type.ARG_LIMIT) {
                String selector = parts.getSubstring(parts.getPart(at++));
                if (parts.getPart(at).getType() == Part.Type.ARG_INT) {
                    at++;
                }
                Part message = parts.getPart(at++);
                cases.put(selector, message(message, name));
            }
            at++;
            return type == ArgType.NONE ? new Node.Value(name) : new Node.Choice(name, type == ArgType.PLURAL, cases);
        }
    }
}
