package hearthcloth.wish;

/** Where she wishes something. What is read and said is the same at each; only a field's name is written differently. */
public enum Door {
    SHELL,
    PAGE;

    /** A field by its name in the shell, such as {@code --most-joins}, as it is called here. */
    String called(String option) {
        return this == SHELL ? option : option.replaceFirst("^--", "").replace('-', ' ');
    }
}
