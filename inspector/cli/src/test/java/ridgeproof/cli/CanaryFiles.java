package ridgeproof.cli;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import ridgeproof.cli.Canaries.Script;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.wsq.WsqEncoder;
import ridgeproof.imagery.wsq.WsqEncoding;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.CharacterType;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.layout.FieldRow;
import ridgeproof.spec.layout.RecordLayout;
import ridgeproof.spec.layout.RecordTypeRow;
import ridgeproof.spec.layout.RecordTypeRow.Encoding;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.record.CharacterEncoding;
import ridgeproof.transaction.writer.FieldDraft;
import ridgeproof.transaction.writer.RecordDraft;
import ridgeproof.transaction.writer.TransactionWriter;

/** Transactions with a canary in every field, subfield and item of every type of record. */
public final class CanaryFiles {

  private static final char GS = 0x1D;
  private static final char FS = 0x1C;
  private static final char RS = 0x1E;
  private static final char US = 0x1F;

  /** Items that no row describes, after those that rows do. */
  private static final int SURPLUS = 2;

  private static final int MAX_BYTES_OF_A_NUMBER = 4;
  private static final int SIDE = 160;
  private static final int UNKNOWN_TYPE = 45;
  private static final int PNG_HEADER = 33;

  private final SpecTables tables;
  private int version;
  private Script script;
  private int letters;
  private int digits;

  private CanaryFiles(SpecTables tables) {
    this.tables = tables;
  }

  /** Every file by its name; no canary is in two of them. */
  public static Map<String, byte[]> all(SpecTables tables) {
    CanaryFiles canaries = new CanaryFiles(tables);
    Map<String, byte[]> files = new LinkedHashMap<>();
    for (int version : List.of(502, 400)) {
      for (Script script : Script.values()) {
        String name = "%s-%04d".formatted(script.name().toLowerCase(Locale.ROOT), version);
        files.put(name, canaries.everywhere(version, script));
      }
    }
    canaries
        .damages()
        .forEach(
            (name, damage) -> {
              String whole = text(canaries.everywhere(502, Script.LETTERS));
              files.put(name, damage.apply(whole).getBytes(StandardCharsets.ISO_8859_1));
            });
    files.put("images", canaries.images());
    files.put("few", canaries.of(List.of(1, 2, 4, 8, 10), 502, Script.LETTERS));
    return files;
  }

  private static String text(byte[] bytes) {
    return new String(bytes, StandardCharsets.ISO_8859_1);
  }

  /** What goes wrong with the characters that hold a file together. */
  private Map<String, UnaryOperator<String>> damages() {
    Map<String, UnaryOperator<String>> damages = new LinkedHashMap<>();
    String lost = next();
    damages.put("before-and-after", text -> lost + "\r\n" + text + lost + GS + lost);
    damages.put("no-field-separators", text -> text.replaceAll(GS + "(?=\\d+\\.\\d*[05]:)", ""));
    damages.put("record-separators", text -> text.replaceAll(GS + "(?=\\d+\\.\\d*[05]:)", "" + FS));
    damages.put("subfields-are-items", text -> text.replace(RS, US));
    damages.put("items-are-subfields", text -> text.replace(US, RS));
    damages.put("items-are-fields", text -> text.replace(US, GS));
    damages.put("fields-are-items", text -> text.replaceAll(GS + "(?=\\d+\\.\\d*5:)", "" + US));
    damages.put("lengths", text -> text.replaceAll("(?<=\\.001:)\\d+", lost));
    damages.put("lengths-of-others", text -> text.replaceAll("(?<=\\.001:)\\d", "7"));
    damages.put(
        "contents",
        text -> text.replaceAll("(?<=[" + RS + US + "])\\d+(?=[" + RS + US + "])", lost));
    damages.put("no-tags", text -> text.replaceAll("(?<=" + GS + ")\\d+\\.\\d*[05]:", lost + ":"));
    damages.put(
        "tags", text -> text.replaceAll("(?<=" + GS + "\\d{1,2})\\.(?=\\d*[05]:)", "." + lost));
    damages.put(
        "tags-of-others", text -> text.replaceAll("(?<=" + GS + ")\\d+(?=\\.\\d*[05]:)", "3"));
    damages.put(
        "tags-of-new-types", text -> text.replaceAll("(?<=[" + GS + FS + "])1(?=\\d\\.)", "4"));
    damages.put("bad-characters", text -> text.replace("QZXW", "\u00E9\u0001 QZXW"));
    damages.put("version", text -> text.replace("1.002:0502", "1.002:" + lost));
    damages.put("idc", text -> text.replaceAll("(?<=\\.002:)\\d\\d(?=" + GS + ")", lost));
    damages.put("cut", text -> text.substring(0, text.length() * 2 / 3));
    damages.put("no-header", text -> text.substring(1));
    damages.put("twice", text -> text + text);
    return damages;
  }

  private byte[] everywhere(int inVersion, Script inScript) {
    return of(IntStream.rangeClosed(1, 99).boxed().toList(), inVersion, inScript);
  }

  private byte[] of(List<Integer> types, int inVersion, Script inScript) {
    version = inVersion;
    script = inScript;
    List<RecordDraft> records = new ArrayList<>();
    for (int type : types) {
      RecordTypeRow row = tables.recordType(type).orElse(null);
      if (row != null) {
        records.add(row.encoding() == Encoding.BINARY ? binary(row) : tagged(type));
      } else if (type == UNKNOWN_TYPE) {
        records.add(tagged(type));
      }
    }
    return new TransactionWriter(CharacterEncoding.ASCII).write(records);
  }

  /** The numbers of a header, and text for an image. */
  private RecordDraft binary(RecordTypeRow type) {
    List<FieldDraft> fields = new ArrayList<>();
    for (FieldRow row : tables.layout(type.type()).rows()) {
      int width = row.bytes().orElse(0);
      if (width > 0 && width <= MAX_BYTES_OF_A_NUMBER) {
        long[] values = new long[row.minOccurs()];
        Arrays.fill(values, row.number().field() == 2 ? type.type() : 1);
        fields.add(FieldDraft.binary(row.number(), width, values));
      } else {
        fields.add(FieldDraft.binary(row.number(), data()));
      }
    }
    return RecordDraft.binary(type.type(), fields);
  }

  private RecordDraft tagged(int type) {
    List<FieldDraft> fields = new ArrayList<>();
    for (FieldNumber number : numbers(type)) {
      fields.add(field(number));
    }
    return RecordDraft.tagged(type, fields);
  }

  /** Every field of any version, some of each run of user-defined ones, and some without a row. */
  private List<FieldNumber> numbers(int type) {
    TreeSet<FieldNumber> numbers = new TreeSet<>();
    for (FieldRow row : tables.layout(type).rows()) {
      numbers.add(row.number());
      numbers.add(row.last());
    }
    for (int field : List.of(1, 2, 188, 199, 200, 201, 555, 777, 899, 900, 901, 950, 1777)) {
      numbers.add(new FieldNumber(type, field));
    }
    tables
        .recordType(type)
        .flatMap(RecordTypeRow::imageField)
        .ifPresent(data -> numbers.removeIf(number -> number.compareTo(data) > 0));
    return List.copyOf(numbers);
  }

  private FieldDraft field(FieldNumber number) {
    RecordLayout layout = tables.layout(number.recordType());
    boolean header = number.recordType() == 1;
    if (number.field() == 1 || header && number.field() == 3) {
      return FieldDraft.text(number, "");
    }
    if (number.field() == 2) {
      String idc = "%02d".formatted(number.recordType());
      return FieldDraft.text(number, header ? "%04d".formatted(version) : idc);
    }
    if (header && number.field() == 15) {
      return FieldDraft.text(number, List.of(List.of("000", next(), next(), next(), next())));
    }
    if (tables
        .recordType(number.recordType())
        .flatMap(RecordTypeRow::imageField)
        .filter(number::equals)
        .isPresent()) {
      return FieldDraft.data(number, data());
    }
    int items = layout.items(number, version).size();
    List<List<String>> subfields = new ArrayList<>();
    for (int subfield = 1; subfield <= 2; subfield++) {
      List<String> values = new ArrayList<>();
      for (int item = 1; item <= Math.max(1, items) + SURPLUS; item++) {
        values.add(value(layout, number, item));
      }
      subfields.add(values);
    }
    return FieldDraft.text(number, subfields);
  }

  private String value(RecordLayout layout, FieldNumber number, int item) {
    boolean ofDigits =
        layout
            .item(number, item, version)
            .map(FieldRow::characters)
            .filter(type -> type == CharacterType.N || type == CharacterType.NS)
            .isPresent();
    return script == Script.DIGITS && ofDigits ? Script.DIGITS.canary(digits++) : next();
  }

  private String next() {
    return Script.LETTERS.canary(letters++);
  }

  private ByteSource data() {
    return ByteSource.of((next() + " " + next()).getBytes(StandardCharsets.US_ASCII));
  }

  /** Images of three formats with comments, and one that is text. */
  private byte[] images() {
    version = 502;
    script = Script.LETTERS;
    GrayImage print = GrayImage.owning(SIDE, SIDE, pixels());
    byte[] wsq = WsqEncoder.encode(print, WsqEncoding.standard(500));
    byte[] jpeg = coded("jpg");
    byte[] png = coded("png");
    RecordDraft header =
        tagged(1).with(4, "FAUF").with(5, "20260302").with(11, "19.69").with(12, "19.69");
    return new TransactionWriter(CharacterEncoding.ASCII)
        .write(
            List.of(
                header,
                print(1, 1, "WSQ20", commented(wsq, 2, 0xA8)),
                print(2, 2, "JPEGB", commented(jpeg, 2, 0xFE)),
                print(3, 3, "PNG", withText(png)),
                print(4, 4, "WSQ20", data().toArray()),
                print(5, 5, "NONE", pixels()),
                print(6, 6, "WSQ20", Arrays.copyOf(commented(wsq, 2, 0xA8), 600))));
  }

  private RecordDraft print(int idc, int position, String compression, byte[] image) {
    RecordDraft record =
        RecordDraft.tagged(14, List.of(FieldDraft.text(new FieldNumber(14, 1), "")));
    List<String> values =
        List.of(
            "%02d".formatted(idc),
            "0",
            "",
            "20260302",
            "" + SIDE,
            "" + SIDE,
            "1",
            "500",
            "500",
            compression,
            "8",
            "" + position);
    for (int i = 0; i < values.size(); i++) {
      record = record.with(2 + i, values.get(i));
    }
    List<FieldDraft> fields = new ArrayList<>(record.with(20, next()).with(200, next()).fields());
    fields.add(FieldDraft.data(new FieldNumber(14, 999), ByteSource.of(image)));
    return RecordDraft.tagged(14, fields);
  }

  private static byte[] pixels() {
    byte[] pixels = new byte[SIDE * SIDE];
    for (int i = 0; i < pixels.length; i++) {
      double x = i % SIDE;
      double y = (double) i / SIDE;
      pixels[i] = (byte) (128 + 90 * Math.sin((x + y / 2) * 0.7));
    }
    return pixels;
  }

  private static byte[] coded(String format) {
    BufferedImage image = new BufferedImage(SIDE, SIDE, BufferedImage.TYPE_BYTE_GRAY);
    image.getRaster().setDataElements(0, 0, SIDE, SIDE, pixels());
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      ImageIO.write(image, format, out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  /** Two comments, one of lines with keys as fingerprint software writes them. */
  private byte[] commented(byte[] image, int at, int marker) {
    List<String> comments =
        List.of(
            "NIST_COM 5\nPPI 500\nOPERATOR "
                + next()
                + "\n"
                + next()
                + " 1\nCOMPRESSION "
                + next()
                + "\nWSQ_BITRATE 0.75\n",
            "captured by " + next());
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(image, 0, at);
    for (String comment : comments) {
      byte[] text = comment.getBytes(StandardCharsets.US_ASCII);
      out.write(0xFF);
      out.write(marker);
      out.write((text.length + 2) >> 8);
      out.write(text.length + 2);
      out.writeBytes(text);
    }
    out.write(image, at, image.length - at);
    return out.toByteArray();
  }

  /** The PNG with a chunk of text after its header. */
  private byte[] withText(byte[] png) {
    byte[] chunk = ("tEXtAuthor\0" + next()).getBytes(StandardCharsets.US_ASCII);
    CRC32 sum = new CRC32();
    sum.update(chunk);
    ByteBuffer out = ByteBuffer.allocate(png.length + chunk.length + 8);
    out.put(png, 0, PNG_HEADER).putInt(chunk.length - 4).put(chunk).putInt((int) sum.getValue());
    out.put(png, PNG_HEADER, png.length - PNG_HEADER);
    return out.array();
  }
}
