package ridgeproof.transaction.writer;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.layout.RecordTypeRow.Encoding;
import ridgeproof.transaction.record.LogicalRecord;

/**
 * A record to be written.
 *
 * @param fields in the order of writing; the length field leads, whatever it says
 */
public record RecordDraft(int type, Encoding encoding, List<FieldDraft> fields) {

  public RecordDraft {
    fields = List.copyOf(fields);
  }

  public static RecordDraft tagged(int type, List<FieldDraft> fields) {
    return new RecordDraft(type, Encoding.TAGGED, fields);
  }

  public static RecordDraft binary(int type, List<FieldDraft> fields) {
    return new RecordDraft(type, Encoding.BINARY, fields);
  }

  /** The record as it was read. */
  public static RecordDraft of(LogicalRecord record) {
    return new RecordDraft(
        record.type(),
        record.encoding(),
        record.fields().stream().map(field -> FieldDraft.of(record, field)).toList());
  }

  /** The same record with a field of text replaced, or put where its number belongs. */
  public RecordDraft with(int field, List<List<String>> subfields) {
    FieldNumber number = new FieldNumber(type, field);
    List<FieldDraft> changed = new ArrayList<>();
    boolean placed = false;
    for (FieldDraft old : fields) {
      if (!placed && old.number().equals(number)) {
        changed.add(new FieldDraft(number, old.tag(), subfields, Optional.empty()));
        placed = true;
      } else {
        if (!placed && old.number().compareTo(number) > 0) {
          changed.add(FieldDraft.text(number, subfields));
          placed = true;
        }
        changed.add(old);
      }
    }
    if (!placed) {
      changed.add(FieldDraft.text(number, subfields));
    }
    return new RecordDraft(type, encoding, changed);
  }

  /** The same record with a field of a single value replaced or added. */
  public RecordDraft with(int field, String value) {
    return with(field, List.of(List.of(value)));
  }

  /** The same record without a field. */
  public RecordDraft without(int field) {
    FieldNumber number = new FieldNumber(type, field);
    return new RecordDraft(
        type, encoding, fields.stream().filter(old -> !old.number().equals(number)).toList());
  }

  /** The IDC as CNT lists it. */
  String idcText() {
    FieldNumber idc = new FieldNumber(type, 2);
    for (FieldDraft field : fields) {
      if (field.number().equals(idc)) {
        return field
            .data()
            .filter(bytes -> encoding == Encoding.BINARY && !bytes.isEmpty())
            .map(bytes -> String.format(Locale.ROOT, "%02d", bytes.byteAt(0)))
            .orElseGet(field::firstText);
      }
    }
    return "";
  }
}
