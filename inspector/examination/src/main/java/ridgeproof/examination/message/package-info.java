/**
 * What the messages of bureaus mean.
 *
 * <p>In: a code or the text of a message. Out: what it means, the rules that find its cause, and
 * what to do, as the rows of the tables have it.
 */
package ridgeproof.examination.message;
