package ridgeproof.spec.consistency;

import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.layout.ItemReference;
import ridgeproof.spec.table.Source;

/**
 * A field whose subfields each name another record of the transaction by a number.
 *
 * @param target the field of the other record that holds the number
 */
public record CrossReference(ItemReference from, FieldNumber target, Source source) {}
