package hearthcloth.store.studio;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Passphrases are kept as Argon2id, held against the reference implementation. */
class PassphraseTest {

    // source: the argon2 command of Debian 12 (argon2 0~20171227-0.3+deb12u1, the reference implementation):
    // printf 'kelp and plum by lamplight' | argon2 'seventeen pieces' -id -t 3 -k 65536 -p 4 -l 32 -e
    private static final String KELP =
            "$argon2id$v=19$m=65536,t=3,p=4$c2V2ZW50ZWVuIHBpZWNlcw" + "$R92kDMaXLgx3fw2eisGTF25tAvMUuM9LC0RzYgS8ovE";

    // printf 'été, naïve' | argon2 'pinch of salt 22' -id -t 2 -k 19456 -p 1 -l 24 -e
    private static final String OLDER =
            "$argon2id$v=19$m=19456,t=2,p=1$cGluY2ggb2Ygc2FsdCAyMg$ZTQEN4PWxQF9EQ1L8gLIdKrp/FvS0eBP";

    @Test
    void what_the_reference_implementation_made_is_matched() {
        assertThat(Passphrase.matches("kelp and plum by lamplight", KELP)).isTrue();
        assertThat(Passphrase.matches("kelp and plum by lamplighT", KELP)).isFalse();
        assertThat(Passphrase.matches("été, naïve", OLDER)).isTrue();
    }

    @Test
    void the_same_letters_composed_otherwise_are_the_same_passphrase() {
        assertThat(Passphrase.matches("e\u0301te\u0301, nai\u0308ve", OLDER)).isTrue();
    }

    @Test
    void todays_setting_is_the_recommended_one_and_an_older_one_is_known_as_such() {
        String kept = Passphrase.hashed("kelp and plum by lamplight");
        assertThat(kept).startsWith("$argon2id$v=19$m=65536,t=3,p=4$");
        assertThat(Passphrase.hashed("kelp and plum by lamplight")).isNotEqualTo(kept);
        assertThat(Passphrase.matches("kelp and plum by lamplight", kept)).isTrue();
        assertThat(Passphrase.isOld(kept)).isFalse();
        assertThat(Passphrase.isOld(OLDER)).isTrue();
    }

    @Test
    void what_is_no_hash_matches_nothing() {
        for (String kept : new String[] {"", "kelp", "$argon2i$v=19$m=65536,t=3,p=4$c2V2ZW50ZWVu$R92k"}) {
            assertThat(Passphrase.matches("kelp", kept)).isFalse();
        }
    }
}
