/**
 * What happened to all prints of a card: mirrored, turned, inverted, hands or fingers exchanged.
 * In: how the prints of the card match. Out: one finding with one remedy, which explains the
 * others.
 */
package ridgeproof.examination.cause.card;
