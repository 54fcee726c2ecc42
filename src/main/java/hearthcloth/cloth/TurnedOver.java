package hearthcloth.cloth;

/** The tree seen from the other face: left and right trade places, and so do right and wrong sides. */
record TurnedOver() implements Assembly.Fold<Assembly> {

    @Override
    public Assembly patch(Patch patch) {
        return new Patch(
                patch.place().turnedOver(),
                patch.fabric(),
                patch.size(),
                patch.showing().turnedOver());
    }

    @Override
    public Assembly seam(Seam seam, Assembly first, Assembly second) {
        return seam.join() == Join.BESIDE
                ? Seam.of(seam.join(), seam.wraps().other(), /* first= */ second, /* second= */ first)
                : Seam.of(seam.join(), seam.wraps(), first, second);
    }
}
