package ridgeproof.spec.descriptive;

import java.util.OptionalInt;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.layout.Presence;
import ridgeproof.spec.table.Source;

/**
 * Whether a type of transaction needs or takes a field of the Type-2 record.
 *
 * @param most how often it may repeat in this type of transaction; empty where nothing is said
 */
public record ParticularRow(
    FieldNumber field, Presence presence, OptionalInt most, Source source) {}
