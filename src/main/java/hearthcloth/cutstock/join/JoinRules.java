package hearthcloth.cutstock.join;

/** Where joins may lie. */
interface JoinRules {

    /** No rule at all. */
    JoinRules NONE = new JoinRules() {
        @Override
        public boolean concerns(int bar) {
            return false;
        }

        @Override
        public boolean arrange(int bar, BarParts parts, Placed placed) {
            return true;
        }
    };

    /** Whether any rule applies to the bar. */
    boolean concerns(int bar);

    /**
     * Orders and trims the parts so that every join lies where it may, leaving their sum unchanged.
     *
     * @return false, with the parts unchanged, if no way was found
     */
    boolean arrange(int bar, BarParts parts, Placed placed);

    /** The cut lengths of bars that are already pieced. */
    interface Placed {
        /** The number of parts of a bar; 0 while it is not pieced. */
        int parts(int bar);

        /** The cut length of a part. */
        long cut(int bar, int part);
    }
}
