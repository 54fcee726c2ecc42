/** Sentences as values: which message and what is in it, said in a language when somebody reads it. */
@NullMarked
package hearthcloth.words.sentence;

import org.jspecify.annotations.NullMarked;
