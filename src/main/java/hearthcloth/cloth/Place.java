package hearthcloth.cloth;

/**
 * Where a patch belongs in the cloth: its name in words, pictures and files. It says nothing of sizes. A joined bar has
 * parts 1, 2 and so on; a bar of one piece has part 0.
 */
public sealed interface Place {

    /** Short and unique within a cloth: {@code hearth}, {@code 1A}, {@code 1A.2}, {@code patch7}. */
    String id();

    /** As written on pictures: {@code 1A·2}. */
    default String label() {
        return id().replace('.', '·');
    }

    /** The same place seen from the other face. */
    default Place turnedOver() {
        return this;
    }

    /** The middle of the cloth, from which the rounds grow. */
    record Hearth() implements Place {
        @Override
        public String id() {
            return "hearth";
        }
    }

    /**
     * A bar or a part of one.
     *
     * @param round from 1, counted outwards
     * @param order from 0 within its round, in the order sewn: 0 is A
     * @param side of the work it is sewn to
     * @param part from 1 along a joined bar (left to right, top to bottom), 0 for a bar in one piece
     */
    record Bar(int round, int order, Side side, int part) implements Place {

        public Bar {
            if (round < 1 || order < 0 || part < 0) {
                throw new IllegalArgumentException("bar " + round + "/" + order + "/" + part + " cannot be");
            }
        }

        /** The name of the whole bar, without its part: {@code 2C}. */
        public String bar() {
            return round + letters(order);
        }

        @Override
        public String id() {
            return part == 0 ? bar() : bar() + "." + part;
        }

        /** The same bar, as part {@code number} of it. */
        public Bar part(int number) {
            return new Bar(round, order, side, number);
        }

        @Override
        public Place turnedOver() {
            return new Bar(round, order, side.turnedOver(), part);
        }

        private static String letters(int order) {
            String last = String.valueOf((char) ('A' + order % 26));
            return order < 26 ? last : letters(order / 26 - 1) + last;
        }
    }

    /** A patch of free patchwork, numbered from 1. */
    record Free(int number) implements Place {
        @Override
        public String id() {
            return "patch" + number;
        }
    }
}
