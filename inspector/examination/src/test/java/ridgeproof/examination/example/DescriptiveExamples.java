package ridgeproof.examination.example;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import ridgeproof.examination.SampleCard;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.spec.agency.AgencyProfileReader;
import ridgeproof.spec.agency.ProfileReading;
import ridgeproof.transaction.writer.RecordDraft;

/** What is said of the person, by the published lists and by an agency. */
final class DescriptiveExamples {

  private static final int HEADER = 1;
  private static final int PARTICULARS = 2;
  private static final SampleCard CARD = SampleCard.rolled();

  private final ExampleList list = new ExampleList("descriptive");

  private DescriptiveExamples() {
    required();
    places();
    dates();
    numbers();
    names();
    agency();
  }

  static ExampleList list() {
    return new DescriptiveExamples().list;
  }

  private void required() {
    list.add("RP-PTL-001 missing", without(CARD, 20, 73));
    list.add("RP-PTL-001 empty", with(20, ""));
    list.add("RP-PTL-001 separators only", with(73, List.of(List.of(""), List.of(""))));
    list.pair("RP-PTL-002", request(""), request("C1"));
    list.add(
        "RP-PTL-003 no field", without(CARD, 5, 18, 20, 22, 24, 25, 27, 29, 31, 32, 37, 38, 73));
    list.add("RP-PTL-003 no record", CARD.without(PARTICULARS));
    list.pair("RP-PTL-004", ofType("QQQ", CARD), ofType("FAUF", CARD));
    list.add("RP-PTL-005", ofType("LSMQ", CARD));
    list.add("RP-PTL-006", with(45, "20260101"));
    list.pair("RP-PTL-054", with(21, places(11)), with(21, places(10)));
    list.pair("RP-PTL-054 as many as the layout allows", marks(10), marks(3));
    list.add(
        "RP-PTL-060", CARD.with(HEADER, draft -> draft.with(13, List.of(List.of("PILOTS", "")))));
  }

  private static List<List<String>> places(int count) {
    List<List<String>> places = new ArrayList<>(Collections.nCopies(count - 1, List.of("GE")));
    places.add(List.of("US"));
    return places;
  }

  /** A search by text, which may name three marks, though the field holds ten. */
  private static SampleCard marks(int count) {
    SampleCard card = without(CARD, 5, 18, 20, 22, 24, 25, 27, 29, 31, 32, 37, 38, 73);
    List<List<String>> marks = Collections.nCopies(count, List.of("TAT L ARM"));
    return ofType("TXTSRCH", card.with(PARTICULARS, draft -> draft.with(26, marks)));
  }

  private static SampleCard request(String caution) {
    SampleCard card = ofType("IRQ", SampleCard.rolled());
    return caution.isEmpty() ? card : card.with(PARTICULARS, draft -> draft.with(85, caution));
  }

  private void places() {
    pair("RP-PTL-010", 20, "US", "MD");
    pair("RP-PTL-011", 20, "ZQ", "GE");
    pair("RP-PTL-011", 21, "ZQ", "GE");
    pair("RP-PTL-012", 20, "NE", "NB");
    list.pair("RP-PTL-012 a citizen", bornIn("NE", "US"), bornIn("NE", "NE"));
    pair("RP-PTL-013", 21, "MD", "US");
  }

  private static SampleCard bornIn(String place, String citizenship) {
    return with(20, place).with(PARTICULARS, draft -> draft.with(21, citizenship));
  }

  private void dates() {
    pair("RP-PTL-020", 22, "20260303", "19260303");
    pair("RP-PTL-020 month", 22, "20260400", "19900200");
    pair("RP-PTL-021", 38, "20260303", "20260302");
    list.pair("RP-PTL-022 arrest", arrest("20260303"), arrest("20260302"));
    list.pair("RP-PTL-022 offense", offense("20260303"), offense("20260302"));
    list.add("RP-FLD-008 offense in another century", offense("21001200"));
    pair("RP-PTL-023 a child", 22, "20190101", "20080101");
    pair("RP-PTL-023 a centenarian", 22, "19200101", "00000000");
    list.pair(
        "RP-PTL-023 on the day of the file",
        without(with(22, "20190101"), 38),
        without(with(22, "20080101"), 38));
    pair("RP-PTL-024", 38, "20250301", "20250302");
    pair("RP-TXN-070 an infant", 22, "20250101", "19900214");
    pair("RP-TXN-070 too old", 22, "19000101", "19300101");
  }

  private void numbers() {
    pair("RP-PTL-030", 73, "123456789", "MDTHP0001");
    pair("RP-PTL-030", 15, "12345678", "MD123456");
    pair("RP-PTL-030", 17, "QQ1234", "PP-1234");
    list.pair("RP-PTL-030 agency", agency("THP-00001"), agency("THP000001"));
    pair("RP-PTL-031", 14, "ABC", "123456A7");
    pair("RP-PTL-032 area", 16, "666121234", "212121234");
    pair("RP-PTL-032 group", 16, "212001234", "212010001");
    pair("RP-PTL-032", 14, "0000000", "1000000");
    pair("RP-PTL-033", 16, "111111111", "111111112");
    pair("RP-PTL-033", 37, "n/a", "PILOT LICENCE");
    pair("RP-PTL-033", 73, "MD0000000", "MD0000001");
    pair("RP-PTL-034", 27, "N20", "N67");
    list.pair("RP-PTL-035 2.030", latent(30, "180120"), latent(30, "120180"));
    list.pair("RP-PTL-035 one weight", latent(30, "151150"), latent(30, "150150"));
    list.pair("RP-PTL-035 2.028", latent(28, "N70507"), latent(28, "507N70"));
    list.pair("RP-PTL-035 2.023", latent(23, "4030"), latent(23, "3040"));
    pair("RP-PTL-036 light", 29, "060", "000");
    pair("RP-PTL-036 heavy", 29, "480", "180");
    list.pair("RP-PTL-036 height unknown", build("400", "300"), build("000", "300"));
    pair("RP-PTL-037", 17, "QQ-1234", "PP-1234");
  }

  private static SampleCard build(String height, String weight) {
    return with(27, height).with(PARTICULARS, draft -> draft.with(29, weight));
  }

  private static SampleCard agency(String identifier) {
    return CARD.with(HEADER, draft -> draft.with(8, identifier));
  }

  private void names() {
    pair("RP-PTL-040 no comma", 18, "ADA SPECIMEN", "SPECIMEN,ADA");
    pair("RP-PTL-040 comma first", 18, ",ADA", "SPECIMEN,ADA");
    pair("RP-PTL-040 space", 18, "SPECIMEN, ADA", "SPECIMEN,ADA MARIA");
    pair("RP-PTL-040 small letters", 18, "Specimen,Ada", "SPECIMEN-ADA,EVE");
    pair("RP-PTL-040", 19, "ADA", "SPECIMEN,EVE");
    pair("RP-PTL-041 period", 18, "SPECIMEN,ADA M.", "SPECIMEN-O'ROCK,ADA MAY");
    pair("RP-PTL-041 comma", 18, "SPECIMEN,ADA,MAY", "VON SPECIMEN,ADA JR");
    pair("RP-PTL-042", 18, "SPECIMEN JR,ADA", "SPECIMEN,ADA JR");
    pair("RP-PTL-042 first", 18, "SPECIMEN,III ADA", "JR,ADA");
    list.pair(
        "RP-PTL-043",
        with(19, List.of(List.of("SPECIMEN,EVE"), List.of("SPECIMEN, ADA"))),
        with(19, "SPECIMEN,EVE"));
  }

  private void agency() {
    String office =
        """
        [[fields]]
        field = "2.9101"
        name = "Submitting office number"
        condition = "mandatory if 1.004 in {FAUF}"
        values = "pattern TW[0-9]{4}"
        meaning = "TW and four digits"
        """;
    String reason = "[[fields]]\nfield = \"2.037\"\nname = \"Reason\"\ncondition = ";
    list.with(asked(office), "RP-PTL-050", CARD);
    list.with(asked(office), "RP-PTL-051", with(9101, "TX0001"));
    list.with(asked(reason + "\"forbidden\"\n"), "RP-PTL-052", CARD);
    list.with(asked(reason + "\"deprecated\"\n"), "RP-PTL-053", CARD);
  }

  private static ExaminationOptions asked(String body) {
    String head = "name = \"tidewater\"\ntitle = \"Tidewater Harbour Pilots' licensing office\"\n";
    ProfileReading reading = AgencyProfileReader.read(head + body, SampleCard.TABLES);
    return ExaminationOptions.standard()
        .withToday(SampleCard.TODAY)
        .withDepth(Depth.STRUCTURE)
        .withAgency(((ProfileReading.Usable) reading).profile());
  }

  private void pair(String example, int field, String departs, String conforms) {
    String name =
        list.offending().containsKey(example) || !example.contains(" ")
            ? example + " 2.0" + field
            : example;
    list.pair(name, with(field, departs), with(field, conforms));
  }

  private static SampleCard with(int field, String value) {
    return with(field, List.of(List.of(value)));
  }

  private static SampleCard with(int field, List<List<String>> subfields) {
    return CARD.with(PARTICULARS, draft -> draft.with(field, subfields));
  }

  private static SampleCard without(SampleCard card, int... fields) {
    return card.with(
        PARTICULARS,
        draft ->
            Arrays.stream(fields)
                .boxed()
                .reduce(draft, RecordDraft::without, (one, other) -> other));
  }

  private static SampleCard ofType(String type, SampleCard card) {
    return card.with(HEADER, draft -> draft.with(4, type));
  }

  private static SampleCard arrest(String date) {
    return criminal().with(PARTICULARS, draft -> draft.with(45, date));
  }

  private static SampleCard offense(String date) {
    return criminal()
        .with(PARTICULARS, draft -> draft.with(47, List.of(List.of(date, "SMUGGLING"))));
  }

  private static SampleCard criminal() {
    return ofType("CAR", without(CARD, 37))
        .with(
            PARTICULARS,
            draft ->
                draft.with(45, "20260302").with(47, List.of(List.of("20260301", "SMUGGLING"))));
  }

  private static SampleCard latent(int field, String value) {
    return ofType("LFS", with(field, value));
  }
}
