/**
 * A year of a small office that does not exist: three stations, six operators, submissions with the
 * responses of a bureau. In: a seed, and whether the year has its three stories. Out: files and
 * what is true of them.
 *
 * <p>Prints come from a pool of subjects, drawn once; each submission shows them in another
 * capture: shifted, with its own contrast and grain, on the platen of its station that day. So
 * 2,000 submissions are no 2,000 people, but each is an image of its own.
 */
package ridgeproof.corpus.year;
