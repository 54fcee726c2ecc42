package hearthcloth.plan.cutjoin;

/** What a bar asks of a lane: its width, which way it may lie, and the fabrics it may be of. */
record LaneKind(long width, Turn turn, Fabrics fabrics) {

    /** Whether a lane of this kind may be cut from the piece, turned or not. */
    boolean suits(StockPiece piece, boolean turned) {
        return fabrics.has(piece.fabric()) && turn.allows(turned, piece.lengthwiseOnly());
    }
}
