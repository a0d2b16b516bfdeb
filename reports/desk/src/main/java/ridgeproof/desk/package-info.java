/**
 * The desk: a page in the browser of this machine for people who do not type commands.
 *
 * <p>In: files that a person drops on the page, or that a watched folder receives. Out: what
 * examination and reports say of them, live. Starts and stops with {@link ridgeproof.desk.Desk}.
 */
package ridgeproof.desk;
