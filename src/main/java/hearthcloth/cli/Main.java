package hearthcloth.cli;

/** Where the program starts. */
public final class Main {

    private Main() {}

    public static void main(String[] args) {
        System.exit(run(args));
    }

    /** Runs one command; 0 done, 1 cannot be made, 2 bad input. */
    static int run(String... args) {
        return 0;
    }
}
