package ridgeproof.spec.consistency;

import ridgeproof.spec.layout.FieldNumber;

/**
 * A field whose subfields each declare a finger missing.
 *
 * @param fingerItem the item with the finger, from 1
 * @param reasonItem the item with the reason, from 1
 */
public record MissingFingerField(FieldNumber field, int fingerItem, int reasonItem) {}
