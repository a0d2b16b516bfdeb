/**
 * What a card of paper shows besides prints: titles, rulings, handwriting and punched holes.
 *
 * <p>In: a seed. Out: marks drawn into the pixels of an image. Nothing unless asked for.
 */
package ridgeproof.corpus.paper;
