package ridgeproof.spec.consistency;

import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.table.Source;

/** A field that tells who the subject is: another value is another person, or a correction. */
public record IdentityField(FieldNumber field, Source source) {}
