package hearthcloth.sew;


/** One thing that can hurt, and how it does not. */
public record Caution(String topic, String words) {}
