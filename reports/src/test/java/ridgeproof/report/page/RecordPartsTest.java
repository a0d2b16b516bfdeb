package ridgeproof.report.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static ridgeproof.report.page.MadeCardReport.field;
import static ridgeproof.report.page.MadeCardReport.finding;
import static ridgeproof.report.page.MadeCardReport.print;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.facts.Depth;
import ridgeproof.finding.Finding;
import ridgeproof.finding.Location;
import ridgeproof.report.PilotCard;
import ridgeproof.report.Reports;
import ridgeproof.report.page.ReportModel.FieldPart;
import ridgeproof.report.page.ReportModel.FindingNote;
import ridgeproof.report.page.ReportModel.RecordPart;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.transaction.record.ByteRange;
import ridgeproof.transaction.record.CharacterEncoding;
import ridgeproof.transaction.writer.FieldDraft;
import ridgeproof.transaction.writer.RecordDraft;
import ridgeproof.transaction.writer.TransactionWriter;

/** Each record with its fields, and the findings beside what they are about. */
class RecordPartsTest {

  private static PilotCard thumb() {
    return PilotCard.ascii().inOrder(List.of(1));
  }

  private static List<RecordPart> parts(FindingsReport report, boolean showPersonal) {
    return new RecordParts(report, showPersonal, new FindingNotes(report, showPersonal)).parts();
  }

  private static List<RecordPart> parts(PilotCard card, Finding... findings) {
    return parts(MadeCardReport.of(card, findings), false);
  }

  private static FieldPart part(RecordPart record, String number) {
    return record.fields().stream()
        .filter(field -> field.number().equals(number))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void eachRecordHasItsTitleItsBytesAndALinkToItsImage() {
    assertEquals(
        List.of(
            "r1: Record 1: Type-1  Transaction information; bytes 0 to 162, 163 bytes; 11 fields; ",
            "r2: Record 2: Type-2, IDC 00  User-defined descriptive text; "
                + "bytes 163 to 199, 37 bytes; 3 fields; ",
            "r3: Record 3: Type-14, IDC 01  Fingerprint image; "
                + "bytes 200 to 1126, 927 bytes; 14 fields; i3"),
        parts(thumb()).stream()
            .map(
                part ->
                    part.anchor()
                        + (": " + part.title())
                        + ("; " + part.extent())
                        + ("; " + part.image()))
            .toList());
  }

  @Test
  void eachFieldHasItsPlaceItsNameAndItsValue() {
    List<RecordPart> records = parts(thumb().header(99, "X"));
    assertEquals(
        new FieldPart(
            "r1-10", 10, 11, "1.002", "VER", "Version number", List.of("0500"), 0, List.of()),
        records.get(0).fields().get(1));
    assertEquals(
        new FieldPart(
            "r1-163",
            163,
            8,
            "1.099",
            "",
            "not in the layout of this version",
            List.of("[masked]"),
            0,
            List.of()),
        part(records.get(0), "1.099"));
  }

  @Test
  void eachSubfieldIsALineAndAnImageIsNotShown() {
    List<RecordPart> records = parts(thumb());
    assertEquals(List.of("1 | 2", "2 | 00", "14 | 01"), part(records.get(0), "1.003").values());
    assertEquals(List.of("768 bytes of data"), part(records.get(2), "14.999").values());
  }

  @Test
  void aPersonalValueIsMaskedUnlessItIsToBeShown() {
    FindingsReport report = MadeCardReport.of(thumb());
    assertEquals(List.of("[masked]"), part(parts(report, false).get(1), "2.018").values());
    assertEquals(List.of("SPECIMEN,ADA"), part(parts(report, true).get(1), "2.018").values());
  }

  @Test
  void ofMoreThanTwelveValuesTheRestIsCounted() {
    String twelve = String.join("\u001e", Collections.nCopies(12, "A"));
    FieldPart all = part(parts(thumb().particular(700, twelve)).get(1), "2.700");
    assertEquals(12, all.values().size());
    assertEquals(0, all.furtherValues());
    FieldPart cut = part(parts(thumb().particular(700, twelve + "\u001eA\u001eA")).get(1), "2.700");
    assertEquals(12, cut.values().size());
    assertEquals(2, cut.furtherValues());
  }

  @Test
  void ofMoreThanFourHundredFieldsTheRestIsCounted() {
    PilotCard card = thumb();
    for (int field = 500; field < 897; field++) {
      card.particular(field, "A");
    }
    RecordPart full = parts(card).get(1);
    assertEquals(400, full.fields().size());
    assertEquals(0, full.furtherFields());
    RecordPart cut = parts(card.particular(897, "A").particular(898, "A")).get(1);
    assertEquals(400, cut.fields().size());
    assertEquals(2, cut.furtherFields());
  }

  @Test
  void aFindingIsBesideItsFieldAndTheFieldPointsToIt() {
    List<RecordPart> records =
        parts(
            thumb(),
            finding("RP-RDG-004", print(3, 1)),
            finding("RP-FLD-008", field(3, 14, 5)),
            finding("RP-FLD-005", field(3, 14, 5)));
    RecordPart record = records.get(2);
    FieldPart date = part(record, "14.005");
    assertEquals(List.of("f2", "f3"), date.findings());
    assertEquals(
        List.of("f1 ", "f2 " + date.anchor(), "f3 " + date.anchor()),
        record.findings().stream().map(note -> note.anchor() + " " + note.field()).toList());
    record.fields().stream()
        .filter(field -> field != date)
        .forEach(field -> assertEquals(List.of(), field.findings(), field.number()));
    assertTrue(records.get(0).quiet() && records.get(1).quiet());
  }

  @Test
  void aFindingAboutAFieldThatIsNotThereIsAboutTheRecord() {
    FindingNote note =
        parts(thumb(), finding("RP-FLD-001", field(2, 2, 19))).get(1).findings().get(0);
    assertEquals("field 2.019", note.place());
    assertEquals("", note.field());
  }

  /** Record 2 has its field 2.020 twice, at bytes 92 and 101. */
  private static byte[] twice() {
    List<RecordDraft> records = new ArrayList<>();
    records.add(
        RecordDraft.tagged(
            1, List.of(text(1, 1, ""), text(1, 2, "0500"), text(1, 3, ""), text(1, 4, "FAUF"))));
    records.add(
        RecordDraft.tagged(
            2, List.of(text(2, 1, ""), text(2, 2, "00"), text(2, 20, "US"), text(2, 20, "CA"))));
    return new TransactionWriter(CharacterEncoding.ASCII).write(records);
  }

  private static FieldDraft text(int type, int number, String value) {
    return FieldDraft.text(new FieldNumber(type, number), value);
  }

  @Test
  void ofAFieldThatIsThereTwiceTheFindingIsBesideTheOneOfItsBytes() {
    FindingsReport base = Reports.examine(twice(), Depth.STRUCTURE);
    List<Integer> offsets =
        base.transaction().records().get(1).fields().stream()
            .filter(field -> field.number().equals(new FieldNumber(2, 20)))
            .map(field -> field.range().offset())
            .toList();
    assertEquals(2, offsets.size());
    int first = offsets.get(0);
    int second = offsets.get(1);
    Location place = field(2, 2, 20);
    FindingsReport report =
        MadeCardReport.of(
            base,
            finding("RP-FLD-008", place.at(new ByteRange(second + 6, 2))),
            finding("RP-FLD-005", place.at(new ByteRange(first, 8))),
            finding("RP-FLD-004", place),
            finding("RP-FLD-003", place.at(new ByteRange(0, 1))));
    assertEquals(
        List.of("f1 r2-" + second, "f2 r2-" + first, "f3 r2-" + first, "f4 r2-" + first),
        parts(report, false).get(1).findings().stream()
            .map(note -> note.anchor() + " " + note.field())
            .toList());
  }
}
