package ridgeproof.finding;

/**
 * A place in a file that is text.
 *
 * @param line counted from 1
 * @param column characters from the start of the line, counted from 1
 * @param path the elements that lead there, each by its usual prefix, numbered where there are
 *     several of a name; {@code *} for one that the encoding does not know; empty outside of all
 */
public record TextPlace(int line, int column, String path) {}
