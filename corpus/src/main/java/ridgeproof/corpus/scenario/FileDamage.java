package ridgeproof.corpus.scenario;

/**
 * What befalls the bytes of a file that was right.
 *
 * @param record place of the record in the file, from 1; the last where 0
 * @param other the record it is swapped with
 * @param by how much is added to the length
 * @param bytes how many are cut or added
 * @param field the field whose leading separator is dropped; empty for the FS that ends the record
 */
public record FileDamage(Kind kind, int record, int other, int by, int bytes, String field) {

  /** The kinds of damage. */
  public enum Kind {
    /** The length of a record is not what it was. */
    LENGTH_OFF,
    /** The last bytes are not there. */
    TAIL_CUT,
    /** A separator is not there; the length was not changed with it. */
    SEPARATOR_DROPPED,
    /** Two records stand in each other's place; the list of contents was not changed with them. */
    RECORDS_SWAPPED,
    /** Line ends that another program added. */
    BYTES_ADDED
  }

  public FileDamage {
    Defaults.required("kind", kind);
    field = Defaults.orElse(field, "");
    if (kind == Kind.LENGTH_OFF && by == 0) {
      throw new IllegalArgumentException("by is missing");
    }
    if ((kind == Kind.TAIL_CUT || kind == Kind.BYTES_ADDED) && bytes < 1) {
      throw new IllegalArgumentException("bytes is missing");
    }
    if (kind == Kind.RECORDS_SWAPPED && (record < 2 || other < 2)) {
      throw new IllegalArgumentException("record and other are two records after the first");
    }
  }
}
