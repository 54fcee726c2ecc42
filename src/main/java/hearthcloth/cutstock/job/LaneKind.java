package hearthcloth.cutstock.job;

/** What a bar asks of a lane: its width, which way it may lie, and the fabrics it may be of. */
public record LaneKind(long width, BarTurn turn, FabricSets fabrics) {

    /** Whether a lane of this kind may be cut from the piece, turned or not. */
    public boolean suits(StockPiece piece, boolean turned) {
        return fabrics.has(piece.fabric()) && turn.allows(turned, piece.lengthwiseOnly());
    }
}
