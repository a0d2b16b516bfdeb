package ridgeproof.corpus.scenario;

/**
 * A field of a tagged record that is typed over, added or removed; the length follows.
 *
 * @param record place of the record in the file, from 1
 * @param field for instance 2.020
 * @param value the new value; left out to remove the field
 */
public record FieldChange(int record, String field, String value) {

  public FieldChange {
    Defaults.within("record", record, 1, 1000);
    if (field == null || !field.matches("[0-9]{1,2}\\.[0-9]{1,9}")) {
      throw new IllegalArgumentException("field is " + field + ", not a number such as 2.020");
    }
  }

  public int number() {
    return Integer.parseInt(field.substring(field.indexOf('.') + 1));
  }

  public boolean removes() {
    return value == null;
  }
}
