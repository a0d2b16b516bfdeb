package ridgeproof.spec.consistency;

import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.table.Source;

/**
 * A field that lists minutiae, one a subfield, and the field that counts them.
 *
 * @param indexItem the item with the number of the minutia
 */
public record MinutiaList(
    FieldNumber field, int indexItem, FieldNumber countField, Source source) {}
