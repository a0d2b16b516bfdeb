package ridgeproof.cli;

import java.util.List;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.transaction.record.CharacterEncoding;
import ridgeproof.transaction.writer.FieldDraft;
import ridgeproof.transaction.writer.RecordDraft;
import ridgeproof.transaction.writer.TransactionWriter;

/** A transaction of a type of which no prints are asked, with nothing to object to. */
final class SmallTransaction {

  private SmallTransaction() {}

  static byte[] bytes() {
    return bytes("20260302", "SPECIMEN,ADA MARIA");
  }

  /** The same under a control number of its own, as files of one folder have. */
  static byte[] numbered(String controlNumber) {
    return bytes("20260302", "SPECIMEN,ADA MARIA", controlNumber);
  }

  /**
   * The same on another day or of somebody else.
   *
   * @param date of the transaction
   * @param name of the subject
   */
  static byte[] bytes(String date, String name) {
    return bytes(date, name, "PILOT-0001");
  }

  private static byte[] bytes(String date, String name, String controlNumber) {
    RecordDraft header =
        RecordDraft.tagged(
            1,
            List.of(
                field(1, 1, ""),
                field(1, 2, "0500"),
                field(1, 3, ""),
                field(1, 4, "NAR"),
                field(1, 5, date),
                field(1, 7, "THP000000"),
                field(1, 8, "THP000001"),
                field(1, 9, controlNumber),
                field(1, 11, "00.00"),
                field(1, 12, "00.00")));
    RecordDraft particulars =
        RecordDraft.tagged(
            2,
            List.of(
                field(2, 1, ""),
                field(2, 2, "00"),
                field(2, 5, "Y"),
                field(2, 18, name),
                field(2, 20, "MD"),
                field(2, 22, "19900214"),
                field(2, 24, "F"),
                field(2, 25, "U"),
                field(2, 27, "507"),
                field(2, 29, "150"),
                field(2, 31, "BRO"),
                field(2, 32, "BLK"),
                field(2, 37, "PILOT LICENCE"),
                field(2, 38, "20260302"),
                field(2, 73, "MDTHP0001")));
    return new TransactionWriter(CharacterEncoding.ASCII).write(List.of(header, particulars));
  }

  private static FieldDraft field(int type, int field, String value) {
    return FieldDraft.text(new FieldNumber(type, field), value);
  }
}
