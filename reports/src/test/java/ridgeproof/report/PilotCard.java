package ridgeproof.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.record.CharacterEncoding;
import ridgeproof.transaction.writer.FieldDraft;
import ridgeproof.transaction.writer.RecordDraft;
import ridgeproof.transaction.writer.TransactionWriter;

/**
 * A card of the invented Tidewater Harbour Pilots' licensing office, with images too small to show
 * a finger.
 */
public final class PilotCard {

  static final int WIDTH = 32;
  static final int HEIGHT = 24;

  private final CharacterEncoding encoding;
  private final Map<Integer, String> header = new TreeMap<>();
  private final Map<Integer, String> particulars = new TreeMap<>();
  private final Map<Integer, String> print = new TreeMap<>();
  private final List<Integer> positions = new ArrayList<>();
  private int brightened;
  private int recaptured;

  public PilotCard(CharacterEncoding encoding) {
    this.encoding = encoding;
    header.putAll(
        Map.of(
            2,
            "0500",
            4,
            "FAUF",
            5,
            "20260302",
            7,
            "THP000000",
            8,
            "THP000001",
            9,
            "PILOT-0001",
            11,
            "00.00",
            12,
            "00.00",
            14,
            "20260302101500Z"));
    particulars.put(2, "00");
    particulars.put(18, "SPECIMEN,ADA");
    print.putAll(
        Map.of(
            3,
            "1",
            4,
            "TIDEWATER PILOTS",
            5,
            "20260302",
            8,
            "1",
            9,
            "500",
            10,
            "500",
            11,
            "NONE",
            12,
            "8"));
    for (int position = 1; position <= 14; position++) {
      positions.add(position);
    }
  }

  public static PilotCard ascii() {
    return new PilotCard(CharacterEncoding.ASCII);
  }

  public PilotCard header(int field, String value) {
    header.put(field, value);
    return this;
  }

  public PilotCard particular(int field, String value) {
    particulars.put(field, value);
    return this;
  }

  /** A field of every print. */
  public PilotCard print(int field, String value) {
    print.put(field, value);
    return this;
  }

  public PilotCard without(int position) {
    positions.remove(Integer.valueOf(position));
    return this;
  }

  /** The prints in that order, each with the position's number as its IDC. */
  public PilotCard inOrder(List<Integer> order) {
    positions.clear();
    positions.addAll(order);
    return this;
  }

  /** The first pixel of that print brighter by 100 gray levels. */
  public PilotCard brightened(int position) {
    brightened = position;
    return this;
  }

  /** That print captured anew: none of its gray levels has to do with those of before. */
  public PilotCard recaptured(int position) {
    recaptured = position;
    return this;
  }

  public byte[] bytes() {
    return new TransactionWriter(encoding).write(records());
  }

  /** With a Type-99 record that holds this data. */
  byte[] bytesWith(byte[] template) {
    List<RecordDraft> records = records();
    List<FieldDraft> fields = new ArrayList<>(fields(99, Map.of(2, "99", 102, "20260302")));
    fields.add(FieldDraft.data(new FieldNumber(99, 999), ByteSource.of(template)));
    records.add(RecordDraft.tagged(99, fields));
    return new TransactionWriter(encoding).write(records);
  }

  private List<RecordDraft> records() {
    List<RecordDraft> records = new ArrayList<>();
    records.add(RecordDraft.tagged(1, fields(1, header)));
    records.add(RecordDraft.tagged(2, fields(2, particulars)));
    positions.forEach(position -> records.add(taggedPrint(position)));
    return records;
  }

  private RecordDraft taggedPrint(int position) {
    Map<Integer, String> values = new TreeMap<>(print);
    values.putIfAbsent(2, "%02d".formatted(position));
    values.putIfAbsent(6, Integer.toString(WIDTH));
    values.putIfAbsent(7, Integer.toString(HEIGHT));
    values.putIfAbsent(13, Integer.toString(position));
    if (position > 10) {
      values.computeIfPresent(3, (field, impression) -> impression.equals("1") ? "0" : impression);
    }
    List<FieldDraft> fields = new ArrayList<>(fields(14, values));
    byte[] pixels = new byte[WIDTH * HEIGHT];
    for (int i = 0; i < pixels.length; i++) {
      pixels[i] = (byte) (i * 7 % 101 + position);
    }
    pixels[0] += position == brightened ? 100 : 0;
    if (position == recaptured) {
      new Random(position).nextBytes(pixels);
    }
    fields.add(FieldDraft.data(new FieldNumber(14, 999), ByteSource.of(pixels)));
    return RecordDraft.tagged(14, fields);
  }

  private static List<FieldDraft> fields(int type, Map<Integer, String> values) {
    List<FieldDraft> fields = new ArrayList<>();
    fields.add(FieldDraft.text(new FieldNumber(type, 1), ""));
    values.forEach(
        (field, value) -> fields.add(FieldDraft.text(new FieldNumber(type, field), value)));
    return fields;
  }
}
