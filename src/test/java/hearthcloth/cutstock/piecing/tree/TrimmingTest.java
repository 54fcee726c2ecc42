package hearthcloth.cutstock.piecing.tree;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** {@link Trimming} beside every way to make the patches smaller. */
class TrimmingTest {

    private static ScrapPatch patch(int scrap, long width, long height) {
        return new ScrapPatch(scrap, false, width, height);
    }

    @Test
    void one_patch_is_cut_to_any_size_from_the_least_to_its_own() {
        ScrapPatch scrap = new ScrapPatch(4, true, 20, 12);

        assertThat(Trimming.to(scrap, 20, 12, new LeastSide(5))).contains(scrap);
        assertThat(Trimming.to(scrap, 5, 7, new LeastSide(5))).contains(new ScrapPatch(4, true, 5, 7));
        assertThat(Trimming.to(scrap, 4, 7, new LeastSide(5))).isEmpty();
        assertThat(Trimming.to(scrap, 5, 4, new LeastSide(5))).isEmpty();
        assertThat(Trimming.to(scrap, 21, 12, new LeastSide(5))).isEmpty();
        assertThat(Trimming.to(scrap, 20, 13, new LeastSide(5))).isEmpty();
    }

    @Test
    void what_stands_out_is_trimmed_off_the_side_where_it_cuts_into_fewest_patches() {
        // two above each other (10 x 6, 10 x 6) beside one of 10 x 12: a unit off the width cuts one patch or two
        Pieced stack = new Joint(false, patch(0, 10, 6), patch(1, 10, 6));
        Pieced left = new Joint(true, stack, patch(2, 10, 12));
        Pieced right = new Joint(true, patch(2, 10, 12), stack);

        assertThat(Trimming.to(left, 17, 12, new LeastSide(2))).contains(new Joint(true, stack, patch(2, 7, 12)));
        assertThat(Trimming.to(right, 17, 12, new LeastSide(2))).contains(new Joint(true, patch(2, 7, 12), stack));
        // the one patch gives no more than 8; the rest comes off both of the others
        assertThat(Trimming.to(left, 11, 12, new LeastSide(2)))
                .contains(new Joint(true, new Joint(false, patch(0, 9, 6), patch(1, 9, 6)), patch(2, 2, 12)));
        assertThat(Trimming.to(right, 11, 12, new LeastSide(2)))
                .contains(new Joint(true, patch(2, 2, 12), new Joint(false, patch(0, 9, 6), patch(1, 9, 6))));
    }

    @Test
    void the_same_holds_for_the_height() {
        Pieced row = new Joint(true, patch(0, 6, 10), patch(1, 6, 10));

        assertThat(Trimming.to(new Joint(false, row, patch(2, 12, 10)), 12, 17, new LeastSide(2)))
                .contains(new Joint(false, row, patch(2, 12, 7)));
        assertThat(Trimming.to(new Joint(false, patch(2, 12, 10), row), 12, 11, new LeastSide(2)))
                .contains(new Joint(false, patch(2, 12, 2), new Joint(true, patch(0, 6, 9), patch(1, 6, 9))));
    }

    @Test
    void sides_that_meet_are_made_equal() {
        Pieced uneven = new Joint(true, patch(0, 10, 9), patch(1, 10, 12));

        assertThat(Trimming.to(uneven, 20, 9, new LeastSide(2)))
                .contains(new Joint(true, patch(0, 10, 9), patch(1, 10, 9)));
        assertThat(Trimming.to(uneven, 20, 10, new LeastSide(2))).isEmpty();
        // the larger would be too small before the smaller is
        assertThat(Trimming.to(new Joint(true, patch(0, 10, 9), patch(1, 10, 3)), 20, 3, new LeastSide(3)))
                .isPresent();
        assertThat(Trimming.to(new Joint(true, patch(0, 10, 9), patch(1, 10, 3)), 20, 2, new LeastSide(3)))
                .isEmpty();
    }

    private record Size(long width, long height) {}

    private static final long LEAST = 2;

    /** All sizes that a tree can be cut to, by trying every size of every patch. */
    private static Set<Size> sizes(Pieced tree) {
        Set<Size> sizes = new HashSet<>();
        if (tree instanceof ScrapPatch patch) {
            for (long w = LEAST; w <= patch.width(); w++) {
                for (long h = LEAST; h <= patch.height(); h++) {
                    sizes.add(new Size(w, h));
                }
            }
            return sizes;
        }
        Joint joint = (Joint) tree;
        for (Size a : sizes(joint.first())) {
            for (Size b : sizes(joint.second())) {
                if (joint.beside() && a.height == b.height) {
                    sizes.add(new Size(a.width + b.width, a.height));
                } else if (!joint.beside() && a.width == b.width) {
                    sizes.add(new Size(a.width, a.height + b.height));
                }
            }
        }
        return sizes;
    }

    private static Pieced random(SplittableRandom chance, List<ScrapPatch> patches, int count) {
        if (count == 1) {
            ScrapPatch patch = new ScrapPatch(
                    patches.size(), chance.nextBoolean(), LEAST + chance.nextInt(5), LEAST + chance.nextInt(5));
            patches.add(patch);
            return patch;
        }
        int first = 1 + chance.nextInt(count - 1);
        return new Joint(chance.nextBoolean(), random(chance, patches, first), random(chance, patches, count - first));
    }

    /** The size of a tree whose sides must meet; adds its patches to the list in their order. */
    private static Size exact(Pieced tree, List<ScrapPatch> patches) {
        if (tree instanceof ScrapPatch patch) {
            patches.add(patch);
            return new Size(patch.width(), patch.height());
        }
        Joint joint = (Joint) tree;
        Size a = exact(joint.first(), patches);
        Size b = exact(joint.second(), patches);
        assertThat(joint.beside() ? a.height == b.height : a.width == b.width).isTrue();
        return joint.beside() ? new Size(a.width + b.width, a.height) : new Size(a.width, a.height + b.height);
    }

    @Test
    void a_tree_is_cut_to_a_size_exactly_where_some_sizes_of_its_patches_make_it() {
        SplittableRandom chance = new SplittableRandom(16);
        for (int i = 0; i < 120; i++) {
            List<ScrapPatch> scraps = new ArrayList<>();
            Pieced tree = random(chance, scraps, 1 + chance.nextInt(4));
            Set<Size> possible = sizes(tree);
            for (long w = 1; w <= 14; w++) {
                for (long h = 1; h <= 14; h++) {
                    Size wanted = new Size(w, h);
                    Optional<Pieced> cut = Trimming.to(tree, w, h, new LeastSide(LEAST));

                    assertThat(cut.isPresent()).as("%s to %s", tree, wanted).isEqualTo(possible.contains(wanted));
                    if (cut.isPresent()) {
                        List<ScrapPatch> patches = new ArrayList<>();
                        assertThat(exact(cut.get(), patches)).isEqualTo(wanted);
                        assertThat(patches).hasSameSizeAs(scraps);
                        for (int k = 0; k < patches.size(); k++) {
                            ScrapPatch patch = patches.get(k);
                            assertThat(patch.scrap()).isEqualTo(k);
                            assertThat(patch.turned()).isEqualTo(scraps.get(k).turned());
                            assertThat(patch.width())
                                    .isBetween(LEAST, scraps.get(k).width());
                            assertThat(patch.height())
                                    .isBetween(LEAST, scraps.get(k).height());
                        }
                    }
                }
            }
        }
    }
}
