/**
 * How sentences are made of words and numbers.
 *
 * <p>In: numbers and nouns. Out: text that agrees in number.
 */
package ridgeproof.report.words;
