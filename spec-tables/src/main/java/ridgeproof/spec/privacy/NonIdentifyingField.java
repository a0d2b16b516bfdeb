package ridgeproof.spec.privacy;

import java.util.Optional;
import java.util.OptionalInt;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.layout.ValueRule;
import ridgeproof.spec.table.Source;

/**
 * A field, or an item of it, whose values tell of nobody.
 *
 * @param item counted from 1; empty for every item of the field
 * @param only the values that are harmless, where not all that the layout allows are
 * @param why how it was judged
 * @param source where the field is described
 */
public record NonIdentifyingField(
    FieldNumber number, OptionalInt item, Optional<ValueRule> only, String why, Source source) {}
