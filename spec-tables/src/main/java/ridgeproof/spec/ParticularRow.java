package ridgeproof.spec;

import java.util.OptionalInt;

/**
 * Whether a type of transaction needs or takes a field of the Type-2 record.
 *
 * @param most how often it may repeat in this type of transaction; empty where nothing is said
 */
public record ParticularRow(
    FieldNumber field, Presence presence, OptionalInt most, Source source) {}
