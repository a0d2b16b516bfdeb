package ridgeproof.spec;

/** A field that tells who the subject is: another value is another person, or a correction. */
public record IdentityField(FieldNumber field, Source source) {}
