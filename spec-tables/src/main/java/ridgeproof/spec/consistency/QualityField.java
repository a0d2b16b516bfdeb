package ridgeproof.spec.consistency;

import java.util.List;
import java.util.OptionalInt;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.table.Source;

/**
 * A field whose subfields each rate a print.
 *
 * @param positionItem the item with the friction ridge position, where there is one
 * @param valueItem the item with the rating
 * @param methodItems the items that tell by which method; ratings by several methods may stand
 *     beside one another
 */
public record QualityField(
    FieldNumber field,
    OptionalInt positionItem,
    int valueItem,
    List<Integer> methodItems,
    Source source) {}
