package ridgeproof.examination;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.transaction.reader.ParseLimits;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.record.CharacterEncoding;
import ridgeproof.transaction.writer.FieldDraft;
import ridgeproof.transaction.writer.RecordDraft;
import ridgeproof.transaction.writer.TransactionWriter;

/**
 * A conforming rolled tenprint card of the invented Tidewater Harbour Pilots' licensing office,
 * with images too small to show a finger; tests change one thing of it.
 */
public final class SampleCard {

  public static final SpecTables TABLES = SpecTables.open();
  public static final LocalDate TODAY = LocalDate.of(2026, 3, 2);
  public static final int WIDTH = 32;
  public static final int HEIGHT = 24;

  private final List<RecordDraft> records;

  private SampleCard(List<RecordDraft> records) {
    this.records = records;
  }

  /** Fourteen Type-4 records. */
  public static SampleCard rolled() {
    List<RecordDraft> records = new ArrayList<>(List.of(header(), particulars()));
    IntStream.rangeClosed(1, 14)
        .forEach(position -> records.add(binaryPrint(position, position, position <= 10 ? 1 : 0)));
    return new SampleCard(records);
  }

  /** Fourteen Type-14 records. */
  public static SampleCard rolledTagged() {
    List<RecordDraft> records =
        new ArrayList<>(List.of(header().with(11, "00.00").with(12, "00.00"), particulars()));
    IntStream.rangeClosed(1, 14)
        .forEach(position -> records.add(taggedPrint(position, position, position <= 10 ? 1 : 0)));
    return new SampleCard(records);
  }

  private static RecordDraft header() {
    return RecordDraft.tagged(
        1,
        List.of(
            text(1, 1, ""),
            text(1, 2, "0500"),
            text(1, 3, ""),
            text(1, 4, "FAUF"),
            text(1, 5, "20260302"),
            text(1, 7, "THP000000"),
            text(1, 8, "THP000001"),
            text(1, 9, "PILOT-0001"),
            text(1, 11, "19.69"),
            text(1, 12, "19.69"),
            FieldDraft.text(new FieldNumber(1, 13), List.of(List.of("NORAM", ""))),
            text(1, 14, "20260302101500Z")));
  }

  private static RecordDraft particulars() {
    return RecordDraft.tagged(
        2,
        List.of(
            text(2, 1, ""),
            text(2, 2, "00"),
            text(2, 5, "Y"),
            text(2, 18, "SPECIMEN,ADA"),
            text(2, 20, "MD"),
            text(2, 22, "19900214"),
            text(2, 24, "F"),
            text(2, 25, "U"),
            text(2, 27, "507"),
            text(2, 29, "150"),
            text(2, 31, "BRO"),
            text(2, 32, "BLK"),
            text(2, 37, "PILOT LICENCE"),
            text(2, 38, "20260302"),
            text(2, 73, "MDTHP0001")));
  }

  public static RecordDraft binaryPrint(int idc, int position, int impression) {
    return RecordDraft.binary(
        4,
        List.of(
            number(4, 1, 4, 0),
            number(4, 2, 1, idc),
            number(4, 3, 1, impression),
            number(4, 4, 1, position, 255, 255, 255, 255, 255),
            number(4, 5, 1, 0),
            number(4, 6, 2, WIDTH),
            number(4, 7, 2, HEIGHT),
            number(4, 8, 1, 0),
            FieldDraft.binary(new FieldNumber(4, 9), pixels(WIDTH * HEIGHT))));
  }

  public static RecordDraft taggedPrint(int idc, int position, int impression) {
    return RecordDraft.tagged(
        14,
        List.of(
            text(14, 1, ""),
            text(14, 2, "%02d".formatted(idc)),
            text(14, 3, Integer.toString(impression)),
            text(14, 4, "TIDEWATER PILOTS"),
            text(14, 5, "20260302"),
            text(14, 6, Integer.toString(WIDTH)),
            text(14, 7, Integer.toString(HEIGHT)),
            text(14, 8, "1"),
            text(14, 9, "500"),
            text(14, 10, "500"),
            text(14, 11, "NONE"),
            text(14, 12, "8"),
            text(14, 13, Integer.toString(position)),
            FieldDraft.data(new FieldNumber(14, 999), pixels(WIDTH * HEIGHT))));
  }

  public static ByteSource pixels(int count) {
    byte[] pixels = new byte[count];
    for (int i = 0; i < count; i++) {
      pixels[i] = (byte) (i * 7 % 256);
    }
    return ByteSource.of(pixels);
  }

  public static FieldDraft text(int type, int field, String value) {
    return FieldDraft.text(new FieldNumber(type, field), value);
  }

  public static FieldDraft number(int type, int field, int width, long... values) {
    return FieldDraft.binary(new FieldNumber(type, field), width, values);
  }

  /** The card with one record changed; records count from 1. */
  public SampleCard with(int record, UnaryOperator<RecordDraft> change) {
    List<RecordDraft> changed = new ArrayList<>(records);
    changed.set(record - 1, change.apply(changed.get(record - 1)));
    return new SampleCard(changed);
  }

  /** The card with one field of one record replaced by another draft of it. */
  public SampleCard withField(int record, FieldDraft field) {
    return with(
        record,
        draft ->
            new RecordDraft(
                draft.type(),
                draft.encoding(),
                draft.fields().stream()
                    .map(old -> old.number().equals(field.number()) ? field : old)
                    .toList()));
  }

  public SampleCard without(int record) {
    List<RecordDraft> changed = new ArrayList<>(records);
    changed.remove(record - 1);
    return new SampleCard(changed);
  }

  /** The card without its 14 prints; what was added to them stays. */
  public SampleCard withoutPrints() {
    List<RecordDraft> changed = new ArrayList<>(records);
    changed.subList(2, 16).clear();
    return new SampleCard(changed);
  }

  /** A transaction of this type with prints of these positions alone. */
  public static SampleCard ofType(String type, int... positions) {
    SampleCard card = rolledTagged().with(1, draft -> draft.with(4, type)).withoutPrints();
    for (int position : positions) {
      card = card.plus(taggedPrint(position, position, position <= 10 ? 1 : 0));
    }
    return card;
  }

  public SampleCard plus(RecordDraft record) {
    List<RecordDraft> changed = new ArrayList<>(records);
    changed.add(record);
    return new SampleCard(changed);
  }

  public byte[] bytes() {
    return new TransactionWriter(CharacterEncoding.ASCII).write(records);
  }

  public FindingsReport examine() {
    return examine(bytes());
  }

  public static FindingsReport examine(byte[] bytes) {
    return examine(bytes, ExaminationOptions.standard().withToday(TODAY).withDepth(Depth.IMAGES));
  }

  public static FindingsReport examine(byte[] bytes, ExaminationOptions options) {
    return new Examiner(TABLES, ParseLimits.standard()).examine(ByteSource.of(bytes), options);
  }
}
