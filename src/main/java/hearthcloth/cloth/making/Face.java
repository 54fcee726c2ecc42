package hearthcloth.cloth.making;

/** One of the two faces of the finished cloth. */
public enum Face {
    FRONT,
    BACK;

    public Face other() {
        return this == FRONT ? BACK : FRONT;
    }
}
