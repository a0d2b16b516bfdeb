package ridgeproof.desk.view;

/**
 * Two files that are worth comparing.
 *
 * @param first id of the one that came first
 * @param second id of the other
 * @param names of both
 * @param why they go together
 */
public record PairOfFiles(String first, String second, String names, String why) {}
