package hearthcloth.cutstock.job;

/** A stock piece that is used, and how it is cut. */
public record CutPiece(StockPiece piece, Cutting cutting) {}
