package ridgeproof.examination.example;

import static ridgeproof.examination.SampleRecords.LEFT_SLAP;
import static ridgeproof.examination.SampleRecords.RIGHT_SLAP;
import static ridgeproof.examination.SampleRecords.box;
import static ridgeproof.examination.SampleRecords.boxes;
import static ridgeproof.examination.SampleRecords.isr;
import static ridgeproof.examination.SampleRecords.pixelFeatures;
import static ridgeproof.examination.SampleRecords.standardFeatures;
import static ridgeproof.examination.SampleRecords.tagged;
import static ridgeproof.examination.SampleRecords.texts;

import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;
import ridgeproof.examination.SampleCard;
import ridgeproof.transaction.writer.RecordDraft;

/** Records that have to agree with each other: links, features, segments, quality, resolutions. */
final class ConsistencyExamples {

  private static final int THUMB = 3;
  private static final SampleCard CARD = SampleCard.rolled();

  private final ExampleList list = new ExampleList("consistency");

  private ConsistencyExamples() {
    links();
    resolutions();
    fingersOfSegments();
    shapesOfSegments();
    quality();
    features();
    captures();
    codes();
  }

  static ExampleList list() {
    return new ConsistencyExamples().list;
  }

  private void links() {
    SampleCard withoutImages = CARD.plus(standardFeatures(1, 3)).withoutPrints();
    list.add("RP-TXN-011", withoutImages);
    list.pair("RP-TXN-012", CARD.plus(standardFeatures(77, 3)), CARD.plus(standardFeatures(3, 3)));
    list.pair(
        "RP-TXN-013",
        CARD.plus(SampleCard.taggedPrint(3, 4, 1)),
        CARD.plus(SampleCard.taggedPrint(3, 3, 1)));
    list.add("RP-TXN-014", CARD.with(2, record -> record.with(2, "20")));
    list.pair("RP-TXN-015", thumb(992, "7"), thumb(992, "0"));
    list.add(
        "RP-TXN-015 each",
        tagged(THUMB, record -> record.with(995, List.of(List.of("1"), List.of("2")))));
  }

  private void resolutions() {
    list.pair("RP-TXN-016", header("19.69", "39.37"), header("39.37", "19.69"));
    list.pair("RP-TXN-017", header("19.00", "19.00"), header("19.60", "19.60"));
    list.pair(
        "RP-TXN-018",
        header("39.37", "19.69").withField(3, isr(1)).withField(4, isr(1)),
        header("39.37", "19.69"));
  }

  private static SampleCard header(String scanned, String sent) {
    return CARD.with(1, header -> header.with(11, scanned).with(12, sent));
  }

  private void fingersOfSegments() {
    list.pair("RP-TXN-019", right(21, boxes(1, 3, 4, 5)), right(21, boxes(2, 3, 4, 5)));
    list.add("RP-TXN-019 other hand", right(21, boxes(10, 9, 8, 7)));
    list.add("RP-TXN-020", right(21, boxes(2, 3, 3, 5)));
    list.add("RP-TXN-021", right(21, boxes(2, 3, 5)));
    list.pair("RP-TXN-022", missing("4", boxes(2, 3, 4, 5)), missing("4", boxes(2, 3, 5)));
    list.add("RP-TXN-023 right", right(21, boxes(2, 4, 3, 5)));
    list.pair(
        "RP-TXN-023 left",
        tagged(LEFT_SLAP, record -> record.with(21, boxes(7, 8, 9, 10))),
        tagged(LEFT_SLAP, record -> record.with(21, boxes(10, 9, 8, 7))));
    list.add("RP-TXN-035", missing("8", boxes(2, 3, 4, 5)));
  }

  private void shapesOfSegments() {
    list.pair("RP-IMG-019 right", segment(0, 33, 0, 24), segment(0, 32, 0, 24));
    list.add("RP-IMG-019 below", segment(0, 32, 0, 25));
    list.pair(
        "RP-IMG-019 polygon", polygon(2, 3, 0, 0, 33, 0, 8, 20), polygon(2, 3, 0, 0, 32, 0, 8, 20));
    list.add(
        "RP-IMG-019 entire joint",
        tagged(
            THUMB,
            record ->
                record
                    .with(13, "19")
                    .with(14, List.of(List.of("1", "EJI")))
                    .with(15, List.of(List.of("FV1", "NA", "0", "99", "0", "24")))));
    list.add("RP-IMG-020 reversed", segment(9, 8, 0, 24));
    list.add("RP-IMG-020 no height", segment(0, 8, 24, 24));
    list.pair("RP-IMG-020 no width", segment(8, 8, 0, 24), segment(8, 9, 0, 24));
    list.add("RP-IMG-020 polygon", polygon(2, 2, 0, 0, 8, 8));
    list.pair(
        "RP-IMG-021",
        right(21, List.of(box(2, 0, 16, 0, 20), box(3, 4, 12, 2, 18))),
        right(21, List.of(box(2, 0, 10, 0, 20), box(3, 8, 18, 0, 20))));
    list.pair("RP-IMG-022", polygon(2, 4, 0, 0, 8, 0, 8, 20), polygon(2, 3, 0, 0, 8, 0, 8, 20));
    list.add("RP-IMG-022 half a corner", polygon(2, 3, 0, 0, 8, 0, 8, 20, 5));
  }

  private static SampleCard segment(int left, int right, int top, int bottom) {
    return right(21, List.of(box(2, left, right, top, bottom)));
  }

  private static SampleCard polygon(int... numbers) {
    return right(25, List.of(texts(numbers)));
  }

  private void quality() {
    list.pair("RP-TXN-024", right(24, rated("7", "80")), right(24, rated("2", "80")));
    list.add("RP-TXN-024 slap", tagged(4, record -> record.with(24, rated("13", "80"))));
    list.add("RP-TXN-024 14.022", right(22, List.of(List.of("7", "2"))));
    list.add("RP-TXN-025", right(24, List.of(rating("2", "80"), rating("2", "70"))));
    list.add("RP-TXN-025 14.022", right(22, List.of(List.of("2", "1"), List.of("2", "2"))));
    list.add("RP-TXN-026", right(24, List.of(rating("2", "254"), rating("3", "255"))));
  }

  private static List<List<String>> rated(String position, String value) {
    return List.of(rating(position, value));
  }

  private static List<String> rating(String position, String value) {
    return List.of(position, value, "000F", "1");
  }

  private void features() {
    list.pair("RP-TXN-027", standard(draft -> draft.with(10, "3")), standard(draft -> draft));
    list.add("RP-TXN-027 pixels", pixels(draft -> draft.with(136, "1")));
    list.pair("RP-TXN-028 right", minutiaAt(33, 0), minutiaAt(32, 0));
    list.pair("RP-TXN-028 below", minutiaAt(0, 25), minutiaAt(0, 24));
    list.add("RP-TXN-028 core", standard(draft -> draft.with(8, "02000060")));
    list.add("RP-TXN-028 delta", standard(draft -> draft.with(9, "00800200")));
    list.add(
        "RP-TXN-028 two of three",
        standard(
            draft ->
                draft
                    .with(10, "3")
                    .with(
                        12,
                        List.of(
                            List.of("001", "01690000000", "30", "A"),
                            List.of("002", "00000129000", "30", "A"),
                            List.of("003", "00100010000", "30", "A")))));
    list.add(
        "RP-TXN-029",
        pixels(draft -> draft.with(137, List.of(minutia(2, 0, 0), minutia(3, 1, 1)))));
    list.pair("RP-TXN-030", CARD.plus(standardFeatures(3, 4)), CARD.plus(standardFeatures(3, 0)));
    list.pair(
        "RP-TXN-031 width",
        pixels(draft -> draft.with(128, "48")),
        pixels(draft -> draft.with(130, "2").with(131, "197").with(132, "197")));
    list.add("RP-TXN-031 scale", pixels(draft -> draft.with(131, "1000").with(132, "1000")));
  }

  private static SampleCard standard(UnaryOperator<RecordDraft> change) {
    return CARD.plus(change.apply(standardFeatures(3, 3)));
  }

  private static SampleCard pixels(UnaryOperator<RecordDraft> change) {
    return SampleCard.rolledTagged().plus(change.apply(pixelFeatures(3, 3)));
  }

  private static SampleCard minutiaAt(int x, int y) {
    return pixels(draft -> draft.with(137, List.of(minutia(1, 0, 0), minutia(2, x, y))));
  }

  private static List<String> minutia(int number, int x, int y) {
    return List.of(
        String.format(Locale.ROOT, "%03d", number),
        Integer.toString(x),
        Integer.toString(y),
        "0",
        "1",
        "80");
  }

  private void captures() {
    list.pair(
        "RP-TXN-032",
        tagged(THUMB, draft -> draft.with(14, List.of(List.of("1", "EJI")))),
        tagged(THUMB, draft -> draft.with(13, "19").with(14, List.of(List.of("1", "EJI")))));
    list.pair("RP-TXN-033", thumb(5, "20260304"), thumb(5, "20260303"));
    list.pair("RP-TXN-034", thumb(5, "19960301"), thumb(5, "19960302"));
  }

  private void codes() {
    list.pair(
        "RP-COD-002",
        compressed("JP2", "1000").with(1, header -> header.with(2, "0300")),
        compressed("JP2", "1000"));
    list.pair("RP-COD-003", particular(25, "H"), particular(25, "W"));
    list.pair("RP-IMG-023", compressed("JPEGB", "500"), compressed("NONE", "500"));
    list.pair("RP-IMG-024", compressed("JP2", "500"), compressed("JP2", "1000"));
    list.add("RP-IMG-024 lossless", compressed("JP2L", "500"));
  }

  private static SampleCard particular(int field, String value) {
    return CARD.with(2, draft -> draft.with(field, value));
  }

  private static SampleCard compressed(String code, String ppi) {
    return tagged(THUMB, draft -> draft.with(9, ppi).with(10, ppi).with(11, code));
  }

  private static SampleCard thumb(int field, String value) {
    return tagged(THUMB, draft -> draft.with(field, value));
  }

  private static SampleCard right(int field, List<List<String>> subfields) {
    return tagged(RIGHT_SLAP, draft -> draft.with(field, subfields));
  }

  private static SampleCard missing(String finger, List<List<String>> segments) {
    return tagged(
        RIGHT_SLAP, draft -> draft.with(18, List.of(List.of(finger, "XX"))).with(21, segments));
  }
}
