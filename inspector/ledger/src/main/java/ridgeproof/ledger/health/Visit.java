package ridgeproof.ledger.health;

import java.util.List;

/**
 * One person at a station.
 *
 * @param day days since 1970-01-01
 * @param operator keyed hash, empty text where none is stated
 * @param ridges whether ridges were examined
 * @param dryPrints prints that were found too dry
 */
record Visit(
    long day, long station, String operator, boolean ridges, int dryPrints, List<Shot> shots) {}
