package ridgeproof.ledger.health;

/**
 * Dry prints of a station against those of all others in the same season.
 *
 * @param others counted together; its station is empty text
 */
public record SeasonShares(DrySeason own, DrySeason others) implements Evidence {}
