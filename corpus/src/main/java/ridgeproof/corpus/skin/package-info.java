/**
 * What years, work, sweat and paper do to prints: creases, wear, scars, skin below the joint,
 * specks, halo and uneven pressure, and what is printed on a card, written on it and punched
 * through it.
 *
 * <p>In: seeds and an age. Out: settings, and changes of skin relief and of paper. All are off
 * unless asked for.
 */
package ridgeproof.corpus.skin;
