package ridgeproof.spec.layout;

/** What a condition looks at. */
public sealed interface Reference {

  /** A field of the record at hand, or of the Type-1 record. */
  record OfField(FieldNumber number) implements Reference {}

  /**
   * An information item of a field, in any of its subfields.
   *
   * @param item counted from 1
   */
  record OfItem(FieldNumber number, int item) implements Reference {}

  /**
   * Another item of the same subfield.
   *
   * @param item counted from 1
   */
  record OfSameSubfield(int item) implements Reference {}

  /** Field 1.002 as a number. */
  record OfVersion() implements Reference {}
}
