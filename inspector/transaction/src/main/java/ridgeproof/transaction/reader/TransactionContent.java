package ridgeproof.transaction.reader;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import ridgeproof.transaction.record.Field;
import ridgeproof.transaction.record.Subfield;
import ridgeproof.transaction.record.WholeNumber;

/**
 * What field 1.003 (CNT) says the file holds after the Type-1 record.
 *
 * @param stated the count of the first subfield, empty where it could not be read
 * @param entries one for each further subfield
 */
record TransactionContent(OptionalInt stated, List<Entry> entries) {

  /**
   * A record that is announced, or that is there.
   *
   * @param idc below 0 for a record that is there without one
   */
  record Entry(int type, int idc) {

    // Written out: the first generated ones of a process cost a short command 20 ms.
    @Override
    public boolean equals(Object other) {
      return other instanceof Entry entry && type == entry.type && idc == entry.idc;
    }

    @Override
    public int hashCode() {
      return 31 * type + idc;
    }

    @Override
    public String toString() {
      return idc < 0
          ? String.format(Locale.ROOT, "Type-%d without a readable IDC", type)
          : String.format(Locale.ROOT, "Type-%d IDC %02d", type, idc);
    }
  }

  static TransactionContent none() {
    return new TransactionContent(OptionalInt.empty(), List.of());
  }

  /** Reads the field; subfields that say nothing readable are left out. */
  static TransactionContent of(Field field) {
    List<Entry> entries = new ArrayList<>();
    for (Subfield subfield : field.subfields().subList(1, field.subfields().size())) {
      OptionalInt type = WholeNumber.parse(subfield.text(1));
      OptionalInt idc = WholeNumber.parse(subfield.text(2));
      if (type.isPresent() && idc.isPresent()) {
        entries.add(new Entry(type.getAsInt(), idc.getAsInt()));
      }
    }
    return new TransactionContent(
        WholeNumber.parse(field.subfields().get(0).text(2)), List.copyOf(entries));
  }
}
