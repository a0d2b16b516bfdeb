/**
 * The gate between a station and what sends its files: takes each file that has stopped growing,
 * examines it, and moves it on or holds it.
 *
 * <p>In: three folders of one file system. Out: every file in exactly one place, byte for byte, and
 * a record of where each went and who released it. Each step is one atomic move or one line of the
 * record, so that a gate that is killed goes on where it was.
 */
package ridgeproof.gate;
