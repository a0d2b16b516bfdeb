package ridgeproof.examination;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalLong;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import ridgeproof.examination.example.ExampleList;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.imagery.DecodingLimits;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.wsq.WsqEncoder;
import ridgeproof.imagery.wsq.WsqEncoding;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.testing.LosslessJpeg;
import ridgeproof.transaction.reader.ParseLimits;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.writer.FieldDraft;
import ridgeproof.transaction.writer.RecordDraft;

/**
 * For rules of the catalogue a file that departs in this one thing from the conforming sample card.
 */
public final class RuleExamples {

  private static final String GS = "\u001D";
  private static final String FS = "\u001C";
  private static final int FIRST_PRINT = 3;

  private final ExampleList offending = new ExampleList("records");

  private RuleExamples() {
    structure();
    fields();
    wholeTransaction();
    images();
  }

  public static ExampleList list() {
    return new RuleExamples().offending;
  }

  private void structure() {
    add("RP-STR-001", () -> new byte[0]);
    add("RP-STR-002", () -> latin1("Dear colleagues"));
    text("RP-STR-003", card -> "X-Sent-By: mail\r\n" + card);
    text("RP-STR-004", card -> card.replaceFirst("2\\.001:\\d+", "2.001:99"));
    text("RP-STR-005", card -> card.replaceFirst("2\\.001:\\d+", "2.001:xx"));
    text("RP-STR-006", card -> card.replaceFirst(FS + "2\\.001", GS + "2.001"));
    text("RP-STR-007", card -> card.replaceFirst(GS + "1\\.005", " 1.005"));
    text("RP-STR-008", card -> card.replaceFirst("2\\.018", "9.018"));
    text("RP-STR-009", card -> card.replaceFirst("2\\.018:", "NAME::"));
    add("RP-STR-010", () -> header(draft -> draft.add(4, SampleCard.text(1, 4, "FAUF"))).bytes());
    add("RP-STR-011", () -> header(draft -> draft.add(draft.remove(5))).bytes());
    text("RP-STR-012", card -> card.substring(0, card.length() - 4));
    text("RP-STR-013", card -> card + "\r\n");
    text("RP-STR-014", card -> card.replaceFirst("1\u001F15", "1\u001F14"));
    text(
        "RP-STR-015",
        card -> card.replaceFirst("4\u001F01\u001E4\u001F02", "4\u001F02\u001E4\u001F01"));
    text("RP-STR-016", card -> card.replaceFirst("4\u001F14", "4\u001F44"));
    text("RP-STR-017", card -> card.replaceFirst("1\\.003:1\u001F15", "1.003:1\u001F--"));
    text("RP-STR-018", card -> card.replaceFirst(FS + "2\\.001", FS + "??2.001"));
    text("RP-STR-019", card -> card.replaceFirst("SPECIMEN", "SP\u00C9CIMEN"));
    add("RP-STR-020", () -> characterSet("002", "UTF-16").bytes());
    add("RP-STR-021", () -> characterSet("077", "unknown").bytes());
    text("RP-STR-023", card -> card.replaceFirst("1\\.002:0500", "1.002:0777"));
    add(
        "RP-STR-024",
        () ->
            SampleCard.rolled()
                .plus(
                    RecordDraft.tagged(
                        66, List.of(SampleCard.text(66, 1, ""), SampleCard.text(66, 2, "01"))))
                .bytes());
    read("RP-STR-025", new ParseLimits(100, 100, 1000, 100));
    read("RP-STR-026", new ParseLimits(1 << 20, 3, 1000, 100));
    text("RP-STR-028", card -> card.replaceFirst("2\\.002:00", "2.002:??"));
  }

  private void fields() {
    add("RP-FLD-001", () -> SampleCard.rolled().with(1, draft -> draft.without(9)).bytes());
    add("RP-FLD-002", () -> tagged(draft -> draft.with(18, List.of(List.of("", "XX")))).bytes());
    add("RP-FLD-003", () -> SampleCard.rolled().with(1, draft -> draft.with(11, "9.69")).bytes());
    add("RP-FLD-004", () -> SampleCard.rolled().with(1, draft -> draft.with(6, "12")).bytes());
    add("RP-FLD-005", () -> tagged(draft -> draft.with(9, "5x0")).bytes());
    text("RP-FLD-006", card -> card.replaceFirst("1\\.003:[^\u001D]*", "1.003:1\u001F15"));
    add(
        "RP-FLD-007",
        () ->
            SampleCard.rolled()
                .with(1, draft -> draft.with(4, List.of(List.of("FAUF"), List.of("FAUF"))))
                .bytes());
    add(
        "RP-FLD-008",
        () -> SampleCard.rolled().with(1, draft -> draft.with(5, "20260231")).bytes());
    add("RP-FLD-009", () -> tagged(draft -> draft.with(14, List.of(List.of("1", "EJI")))).bytes());
    add("RP-FLD-010", () -> SampleCard.rolled().plus(oldMinutiae()).bytes());
    add(
        "RP-FLD-011",
        () -> SampleCard.rolled().with(1, draft -> draft.with(88, "something")).bytes());
    add(
        "RP-FLD-012",
        () ->
            SampleCard.rolled()
                .with(1, draft -> draft.with(13, List.of(List.of("NORAM", "1", "surplus"))))
                .bytes());
    add(
        "RP-FLD-012 field without items",
        () ->
            SampleCard.rolled()
                .with(1, draft -> draft.with(8, List.of(List.of("THP000001", "X"))))
                .bytes());
    add(
        "RP-FLD-013",
        () -> SampleCard.rolledTagged().with(1, draft -> draft.with(2, "0201")).bytes());
    add("RP-FLD-016", () -> SampleCard.rolled().with(1, draft -> draft.with(10, "")).bytes());
    add("RP-FLD-016 items", () -> tagged(draft -> draft.with(18, "")).bytes());
    add("RP-FLD-001 image of no bytes", () -> tagged(d -> data(d, new byte[0])).bytes());
    add("RP-FLD-035", () -> tagged(draft -> draft.with(11, "wsq20")).bytes());
    add("RP-COD-001", () -> tagged(draft -> draft.with(11, "ZIP99")).bytes());
  }

  private void wholeTransaction() {
    add("RP-TXN-001", () -> SampleCard.rolled().with(1, d -> d.with(11, "00.00")).bytes());
    add("RP-TXN-002", () -> SampleCard.rolled().with(1, d -> d.with(12, "00.00")).bytes());
    add("RP-TXN-003", () -> SampleCard.rolled().plus(SampleCard.binaryPrint(15, 1, 1)).bytes());
    add("RP-TXN-004", () -> SampleCard.rolled().without(FIRST_PRINT).bytes());
    add(
        "RP-TXN-005",
        () ->
            SampleCard.rolled()
                .with(2, draft -> draft.with(84, List.of(List.of("01", "XX"))))
                .bytes());
    add(
        "RP-TXN-006",
        () ->
            SampleCard.rolled()
                .without(FIRST_PRINT + 1)
                .with(2, draft -> draft.with(84, List.of(List.of("02", "XX"))))
                .bytes());
    add("RP-TXN-007", () -> ofType("QQQ", withoutPrints()).bytes());
    add("RP-TXN-008", () -> SampleCard.rolled().plus(SampleCard.binaryPrint(1, 15, 0)).bytes());
    add(
        "RP-TXN-009",
        () -> SampleCard.rolled().withField(16, SampleCard.number(4, 3, 1, 1)).bytes());
    add("RP-TXN-010", () -> ofType("CAR", withPrints(13, 14, 15)).bytes());
    add("RP-TXN-040", () -> ofType("FAUF", withPrints(13, 14)).bytes());
    add("RP-TXN-041", () -> withoutPrints().bytes());
    add("RP-TXN-042", () -> SampleCard.rolled().without(FIRST_PRINT + 13).bytes());
    add("RP-TXN-043", () -> ofType("FVR", withPrints(1)).bytes());
    add("RP-TXN-044", () -> ofType("LFIS", withoutPrints()).bytes());
    add("RP-TXN-045", () -> ofType("ELR", withoutPrints()).bytes());
    add("RP-TXN-046", () -> ofType("LFIS", withPrints(1)).bytes());
    add("RP-TXN-047", () -> ofType("IRQ", withPrints(1)).bytes());
    add("RP-TXN-048", () -> SampleCard.rolled().plus(SampleCard.binaryPrint(15, 15, 0)).bytes());
    add("RP-TXN-049", () -> SampleCard.rolled().plus(oldMinutiae()).bytes());
    add("RP-TXN-050", () -> ofType("FRS", withoutPrints()).bytes());
    add("RP-TXN-051", () -> ofType("IIDS", withoutPrints()).bytes());
    add("RP-TXN-052", () -> marked("MISS L FGR").bytes());
    add(
        "RP-TXN-053",
        () ->
            marked("TAT L ARM")
                .without(FIRST_PRINT + 1)
                .with(2, draft -> draft.with(84, List.of(List.of("02", "XX"))))
                .bytes());
  }

  private static SampleCard ofType(String type, SampleCard card) {
    return card.with(1, draft -> draft.with(4, type));
  }

  private static SampleCard withPrints(int... positions) {
    SampleCard card = withoutPrints();
    for (int position : positions) {
      card = card.plus(SampleCard.taggedPrint(position, position, position <= 10 ? 1 : 0));
    }
    return card;
  }

  private static SampleCard marked(String mark) {
    return SampleCard.rolled().with(2, draft -> draft.with(26, mark));
  }

  private void images() {
    add("RP-IMG-001", () -> wsq(GrayImage.owning(90, 100, new byte[9000])).bytes());
    add("RP-IMG-002", () -> wsq(GrayImage.owning(100, 90, new byte[9000])).bytes());
    add("RP-IMG-003", () -> wsqCard(draft -> draft.with(12, "1"), 500).bytes());
    add("RP-IMG-004", () -> wsqCard(draft -> draft, 250).bytes());
    add("RP-IMG-005", () -> wsqCard(draft -> draft.with(11, "PNG"), 500).bytes());
    add(
        "RP-IMG-006",
        () -> tagged(d -> data(d.with(11, "WSQ20"), cut(stream(100, 100, 500)))).bytes());
    add(
        "RP-IMG-007",
        () -> tagged(d -> sized(data(d, plus(stream(100, 100, 500))), "100")).bytes());
    add("RP-IMG-008", () -> tagged(d -> d.with(9, "300").with(10, "300")).bytes());
    add("RP-IMG-009", () -> raw(900, 700).bytes());
    add("RP-IMG-010", () -> raw(804, 752).bytes());
    add("RP-IMG-011", () -> tagged(d -> d.with(6, "31")).bytes());
    add("RP-IMG-012", () -> wsqCard(draft -> draft.with(9, "1000").with(10, "1000"), 1000).bytes());
    add("RP-IMG-013", () -> tagged(d -> d.without(999)).bytes());
    add("RP-IMG-014", () -> tagged(draft -> draft.with(11, "ZIP99")).bytes());
    offending.examined(
        "RP-IMG-015",
        () ->
            SampleCard.examine(
                SampleCard.rolled().bytes(),
                ExaminationOptions.standard()
                    .withDepth(Depth.IMAGES)
                    .withImageLimits(new DecodingLimits(100, Duration.ofSeconds(9)))));
    offending.examined(
        "RP-IMG-070",
        () ->
            SampleCard.examine(
                SampleCard.rolled().bytes(),
                ExaminationOptions.standard()
                    .withDepth(Depth.IMAGES)
                    .withImageLimits(
                        new DecodingLimits(
                            1_000_000,
                            Duration.ofSeconds(9),
                            OptionalLong.of(100),
                            Duration.ofSeconds(9)))));
    add("RP-IMG-016", () -> wsqCard(RidgeImage.usual(), 0.35).bytes());
    add("RP-IMG-050", () -> tagged(d -> data(d.with(11, "JPEGL"), losslessJpeg(1))).bytes());
    add("RP-IMG-017", () -> tagged(d -> d.with(10, "1000")).bytes());
    add(
        "RP-IMG-018",
        () ->
            tagged(d -> data(d.with(12, "24"), new byte[SampleCard.WIDTH * SampleCard.HEIGHT * 3]))
                .bytes());
  }

  /** A Type-9 record with a field of the standard format that version 0500 no longer wants. */
  private static RecordDraft oldMinutiae() {
    return RecordDraft.tagged(
        9,
        List.of(
            SampleCard.text(9, 1, ""),
            SampleCard.text(9, 2, "01"),
            SampleCard.text(9, 3, "1"),
            SampleCard.text(9, 4, "S"),
            SampleCard.text(9, 10, "0")));
  }

  private static SampleCard withoutPrints() {
    SampleCard card = SampleCard.rolled().withoutPrints();
    return card.with(1, draft -> draft.with(11, "00.00").with(12, "00.00"));
  }

  private static SampleCard characterSet(String code, String name) {
    return SampleCard.rolled().with(1, draft -> draft.with(15, List.of(List.of(code, name, ""))));
  }

  public static SampleCard tagged(UnaryOperator<RecordDraft> change) {
    return SampleCard.rolledTagged().with(FIRST_PRINT, change);
  }

  private static SampleCard raw(int width, int height) {
    return tagged(
        draft ->
            data(
                draft.with(6, Integer.toString(width)).with(7, Integer.toString(height)),
                new byte[width * height]));
  }

  private static SampleCard wsq(GrayImage image) {
    return tagged(
        draft ->
            sized(
                data(draft, WsqEncoder.encode(image, WsqEncoding.standard(500))),
                Integer.toString(Math.max(image.width(), image.height()))));
  }

  private static SampleCard wsqCard(UnaryOperator<RecordDraft> change, int ppi) {
    return tagged(draft -> change.apply(sized(data(draft, stream(100, 100, ppi)), "100")));
  }

  /** A card with this one print, encoded for so many bits per pixel. */
  public static SampleCard wsqCard(GrayImage image, double rate) {
    byte[] codestream = WsqEncoder.encode(image, new WsqEncoding(rate, 500, 0));
    return tagged(
        draft ->
            sized(data(draft, codestream), Integer.toString(image.width()))
                .with(7, Integer.toString(image.height())));
  }

  private static RecordDraft sized(RecordDraft draft, String pixels) {
    return draft.with(6, pixels).with(7, pixels).with(11, "WSQ20");
  }

  private static byte[] stream(int width, int height, int ppi) {
    GrayImage image = GrayImage.owning(width, height, SampleCard.pixels(width * height).toArray());
    return WsqEncoder.encode(image, new WsqEncoding(WsqEncoding.HIGH_BITS_PER_PIXEL, ppi, 1));
  }

  /** A Type-14 record of 500 ppi whose image notes another resolution. */
  public static RecordDraft wsqRecord(GrayImage image, int notedPpi) {
    byte[] codestream = WsqEncoder.encode(image, new WsqEncoding(2, notedPpi, 0));
    return sized(data(SampleCard.taggedPrint(1, 1, 1), codestream), Integer.toString(image.width()))
        .with(7, Integer.toString(image.height()));
  }

  /** Pixels of the sample card, with a Huffman table marked as of this class. */
  public static byte[] losslessJpeg(int tableClass) {
    byte[] pixels = SampleCard.pixels(SampleCard.WIDTH * SampleCard.HEIGHT).toArray();
    return LosslessJpeg.encode(SampleCard.WIDTH, SampleCard.HEIGHT, pixels, tableClass);
  }

  private static byte[] cut(byte[] stream) {
    return Arrays.copyOf(stream, stream.length / 2);
  }

  private static byte[] plus(byte[] stream) {
    return Arrays.copyOf(stream, stream.length + 5);
  }

  public static RecordDraft data(RecordDraft draft, byte[] bytes) {
    FieldNumber number = new FieldNumber(draft.type(), 999);
    return new RecordDraft(
        draft.type(),
        draft.encoding(),
        draft.fields().stream()
            .map(
                field ->
                    field.number().equals(number)
                        ? FieldDraft.data(number, ByteSource.of(bytes))
                        : field)
            .toList());
  }

  private static SampleCard header(Consumer<List<FieldDraft>> change) {
    return SampleCard.rolled()
        .with(
            1,
            draft -> {
              List<FieldDraft> fields = new ArrayList<>(draft.fields());
              change.accept(fields);
              return new RecordDraft(1, draft.encoding(), fields);
            });
  }

  private void text(String rule, UnaryOperator<String> damage) {
    add(
        rule,
        () ->
            latin1(
                damage.apply(
                    new String(SampleCard.rolled().bytes(), StandardCharsets.ISO_8859_1))));
  }

  private void add(String rule, Supplier<byte[]> bytes) {
    offending.examined(rule, () -> SampleCard.examine(bytes.get()));
  }

  private void read(String rule, ParseLimits limits) {
    offending.examined(
        rule,
        () ->
            new Examiner(SampleCard.TABLES, limits)
                .examine(
                    ByteSource.of(SampleCard.rolled().bytes()),
                    ExaminationOptions.standard().withDepth(Depth.IMAGES)));
  }

  private static byte[] latin1(String text) {
    return text.getBytes(StandardCharsets.ISO_8859_1);
  }
}
