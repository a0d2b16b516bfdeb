package ridgeproof.api;

/**
 * The finger or group of fingers that a finding is about.
 *
 * @param code friction ridge position code, such as 2
 * @param name in words, such as "right index finger"
 */
public record PrintPosition(int code, String name) {}
