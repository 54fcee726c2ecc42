package hearthcloth.web.made;

import hearthcloth.cloth.making.Face;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.plan.model.Plan;
import hearthcloth.stash.Fabric;
import hearthcloth.store.SavedCloth;
import hearthcloth.web.cloth.ClothAsked;
import hearthcloth.web.drawn.ClothDrawing;
import hearthcloth.web.gift.Wished;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.PageFrame;
import hearthcloth.web.kit.Swatches;
import hearthcloth.words.finishing.FinishingWords;
import hearthcloth.words.speech.Voice;
import hearthcloth.work.Keepsake;
import hearthcloth.work.Project;
import hearthcloth.work.Project.Life;
import hearthcloth.work.Purpose;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/** Gathers what the page of a finished cloth shows. */
record MadeShown(PageContext room, SavedCloth cloth, Plan plan, Voice voice) {

    static MadeShown of(PageContext room, SavedCloth cloth) {
        return new MadeShown(
                room,
                cloth,
                ClothAsked.plan(cloth),
                ClothAsked.settings(room, cloth).voice());
    }

    private Ruler ruler() {
        return voice.ruler();
    }

    private FinishingWords words() {
        return FinishingWords.in(voice.language());
    }

    MadeSheet sheet(PageFrame frame) {
        return new MadeSheet(frame, cloth, pictures(), slip(), told());
    }

    private Life life() {
        return cloth.document().life();
    }

    private Purpose purpose() {
        return Wished.of(room.store(), cloth);
    }

    private MadeSheet.Pictures pictures() {
        Swatches swatches = new Swatches(plan.fabrics(), room.store().swatches().across());
        String own = "/cloths/" + cloth.id();
        String version = "?v=" + cloth.version();
        boolean ties = purpose()
                .wrapped(ruler())
                .flatMap(round -> round.fold(plan.cloth()))
                .isPresent();
        List<Fabric> fabrics = plan.fabrics();
        return new MadeSheet.Pictures(
                MadePage.photograph(room.store(), cloth.id()),
                own + (ties ? "/tied.svg" : "/flat.svg") + version,
                ClothDrawing.still(plan.cloth(), Face.FRONT, swatches, words().picture(cloth.name())),
                fabrics.stream().map(swatches::swatch).toList(),
                life().stage() == Project.Stage.SEWN && !fabrics.isEmpty() ? Bunting.of(fabrics, swatches) : "");
    }

    private MadeSheet.Slip slip() {
        Keepsake kept = life().kept();
        Optional<Keepsake.Measured> real = kept.measured();
        String offered = purpose().thing().map(gift -> gift.describe(voice)).orElse("");
        return new MadeSheet.Slip(
                life().made().isEmpty() ? lastDay().map(this::written).orElse("") : life().made(),
                life().wrapped().isEmpty() ? offered : life().wrapped(),
                life().keeper(),
                new MadeSheet.Measures(
                        number(real.map(Keepsake.Measured::width)),
                        number(real.map(Keepsake.Measured::height)),
                        number(real.flatMap(one -> one.corners().stream().findFirst())),
                        number(real.flatMap(
                                one -> one.corners().stream().skip(1).findFirst()))),
                kept.word());
    }

    private String number(Optional<Length> length) {
        return length.map(one -> voice.number(one, Rounding.NEAREST)).orElse("");
    }

    private MadeSheet.Told told() {
        return new MadeSheet.Told(
                how(),
                voice.write(plan.cloth().finished(), Rounding.NEAREST),
                life().kept()
                        .measured()
                        .map(real -> SlipForm.against(real, plan.cloth().finished(), voice))
                        .orElse(""),
                tie(),
                written(day(room.store().now())),
                left());
    }

    private String how() {
        int bars = cloth.document().design().layout().courses().size();
        int fabrics = plan.fabrics().size();
        int days = Math.toIntExact(days().distinct().count());
        String parts = cloth.document().isFree()
                ? words().patches(plan.cloth().patches().size())
                : words().bars(bars);
        return words().how(days, fabrics, parts);
    }

    private String written(LocalDate day) {
        return words().date(
                        String.valueOf(day.getDayOfMonth()), "m" + day.getMonthValue(), String.valueOf(day.getYear()));
    }

    private java.util.stream.Stream<LocalDate> days() {
        return cloth.document().bench().done().stream().map(done -> day(done.at()));
    }

    private Optional<LocalDate> lastDay() {
        return life().stage() == Project.Stage.SEWN ? days().max(LocalDate::compareTo) : Optional.empty();
    }

    private static LocalDate day(Instant at) {
        return LocalDate.ofInstant(at, ZoneId.systemDefault());
    }

    private String tie() {
        Purpose purpose = purpose();
        return purpose.tied()
                .map(tie -> "/tie/" + tie.words().replace(' ', '-') + "?gift="
                        + URLEncoder.encode(purpose.gift(), StandardCharsets.UTF_8) + "&cloth=" + cloth.id())
                .orElse("");
    }

    private MadeSheet.Left left() {
        if (life().stage() == Project.Stage.DESIGNED) {
            return new MadeSheet.Left("", "", "", false);
        }
        Leftovers left = Leftovers.of(cloth.document(), room.store().stash().whole());
        Swatches swatches = new Swatches(
                left.here().stream().map(piece -> piece.fabric()).distinct().toList(),
                room.store().swatches().across());
        return new MadeSheet.Left(
                left.all().isEmpty() ? "" : left.heading(words()),
                left.where(words()),
                left.drawn(swatches, voice),
                !left.here().isEmpty());
    }
}
