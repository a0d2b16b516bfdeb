package ridgeproof.spec;

/**
 * How a kind of file begins.
 *
 * @param hex the bytes, two digits each
 * @param offset where they stand
 * @param kind what to call it, with an article
 */
public record FileSignature(String hex, int offset, String kind) {}
