package ridgeproof.spec;

/** Whether a type of transaction needs, takes or excludes a field of the Type-2 record. */
public record ParticularRow(FieldNumber field, Presence presence, Source source) {}
