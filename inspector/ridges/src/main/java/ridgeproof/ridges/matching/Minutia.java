package ridgeproof.ridges.matching;

/**
 * A ridge ending or bifurcation.
 *
 * @param x pixels from the left edge of the image
 * @param y pixels from the top edge of the image
 * @param degrees the direction of the ridge, clockwise from the x axis as seen on the image
 * @param ending whether a ridge ends here; otherwise it forks
 */
public record Minutia(double x, double y, double degrees, boolean ending) {}
