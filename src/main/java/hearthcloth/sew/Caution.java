package hearthcloth.sew;

/** One thing that can hurt, and how to avoid it. */
public record Caution(String topic, String words) {}
