package hearthcloth.benchmarks.sets;

import hearthcloth.cutstock.piecing.Allowances;
import hearthcloth.cutstock.piecing.PiecingJob;
import hearthcloth.cutstock.piecing.Scrap;
import hearthcloth.cutstock.piecing.Terms;
import hearthcloth.cutstock.piecing.WishedCloth;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/** Reads problems of free piecing, as their format is described in {@code benchmarks/README.md}. */
public final class PiecingFile {

    private PiecingFile() {}

    /** The problem that the file says. */
    public static PiecingJob read(NumberFile file) {
        file.named("free-piecing", 1);
        file.skip("unit");
        int count = file.count(file.named("cloths", 1)[0]);
        List<WishedCloth> cloths = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            long[] size = file.named("target", 2);
            cloths.add(said(file, () -> new WishedCloth(size[0], size[1])));
        }
        long[] allow = file.named("allow", 3);
        Allowances allowances = said(file, () -> new Allowances(allow[0], allow[1], allow[2]));
        long least = file.named("least", 1)[0];
        long[] keep = file.named("keep", 2);
        long patches = file.named("patches", 1)[0];
        long clearance = file.named("clearance", 1)[0];
        Terms terms = said(
                file, () -> new Terms(least, keep[0], keep[1], (int) Math.min(patches, Integer.MAX_VALUE), clearance));
        List<Scrap> scraps = scraps(file);
        file.end();
        return said(file, () -> new PiecingJob(cloths, scraps, allowances, terms));
    }

    private static List<Scrap> scraps(NumberFile file) {
        List<Scrap> scraps = new ArrayList<>();
        int count = file.count(file.named("scraps", 1)[0]);
        for (long[] row : file.rows(count, 4, "w h fabric turn")) {
            scraps.add(said(file, () -> new Scrap(row[0], row[1], (int) Math.min(row[2], 1_000_000), row[3] != 0)));
        }
        return scraps;
    }

    private static <T> T said(NumberFile file, Supplier<T> made) {
        try {
            return made.get();
        } catch (IllegalArgumentException senseless) {
            throw file.wrong("or one before it makes no sense: " + senseless.getMessage());
        }
    }
}
