/**
 * The health of stations, from what the images of many people share: spots and dead lines that stay
 * at one place, light, contrast, scale, encoder, and how wide an operator rolls. In: the prints of
 * a ledger. Out: findings about a station or an operator, with the date of a change only where a
 * test of a stated error rate finds one.
 *
 * <p>All findings of one report together are false with a probability of at most {@link
 * ridgeproof.ledger.health.StationHealth#ERROR_RATE}, if the people who come to a station do not
 * change with time.
 */
package ridgeproof.ledger.health;
