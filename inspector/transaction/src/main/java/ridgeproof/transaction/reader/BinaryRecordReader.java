package ridgeproof.transaction.reader;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import ridgeproof.finding.Location;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.layout.FieldRow;
import ridgeproof.spec.layout.Presence;
import ridgeproof.spec.layout.RecordLayout;
import ridgeproof.spec.layout.RecordTypeRow.Encoding;
import ridgeproof.transaction.record.ByteRange;
import ridgeproof.transaction.record.Field;
import ridgeproof.transaction.record.Item;
import ridgeproof.transaction.record.LogicalRecord;
import ridgeproof.transaction.record.Subfield;

/** Reads records whose fields are unsigned numbers at fixed places: types 3 to 8. */
final class BinaryRecordReader {

  private static final int END_OF_FILE = 0x1A;
  private static final int HORIZONTAL_LINE_LENGTH = 6;
  private static final int VERTICAL_LINE_LENGTH = 7;

  private final ParseContext context;

  BinaryRecordReader(ParseContext context) {
    this.context = context;
  }

  /** Reads the record that begins at the position, whatever its bytes are. */
  LogicalRecord read(int start, int ordinal, int type) {
    RecordLayout layout = context.tables.layout(type);
    List<BinaryHeader.Value> header = header(start, layout);
    int headerEnd = start + BinaryHeader.size(header);
    int end = end(start, header, ordinal, type);
    List<Field> fields = fields(header);
    ByteRange data = context.absolute(Math.min(headerEnd, end), end);
    if (data.length() > 0) {
      FieldNumber image =
          context
              .tables
              .recordType(type)
              .flatMap(row -> row.imageField())
              .orElse(new FieldNumber(type, 999));
      fields.add(new Field(image, "", data, data, List.of()));
    }
    OptionalInt idc =
        header.size() > 1 ? OptionalInt.of((int) header.get(1).number()) : OptionalInt.empty();
    return new LogicalRecord(
        ordinal,
        type,
        Encoding.BINARY,
        idc,
        context.absolute(start, end),
        fields,
        List.of(),
        context.source.slice(start, end - start));
  }

  /**
   * The numbers at the head; those the layout leaves to agreement only where all of them make
   * sense.
   */
  private List<BinaryHeader.Value> header(int start, RecordLayout layout) {
    List<BinaryHeader.Value> all =
        BinaryHeader.readAvailable(context.source, start, layout, context.version());
    List<BinaryHeader.Value> agreed = all.stream().filter(v -> !isByAgreement(v.row())).toList();
    return agreed.size() == all.size() || context.starts.valuesFit(all) ? all : agreed;
  }

  private static boolean isByAgreement(FieldRow row) {
    return row.presence().clauses().isEmpty()
        || row.presence().clauses().get(0).demand() == Presence.Demand.OPTIONAL;
  }

  private int end(int start, List<BinaryHeader.Value> header, int ordinal, int type) {
    int fileEnd = context.source.length();
    int headerEnd = start + BinaryHeader.size(header);
    Location place = Location.inRecord(ordinal, type).at(context.absolute(start, headerEnd));
    if (!context.source.has(start, 4)) {
      context.cutOff(place, fileEnd - start);
      return fileEnd;
    }
    long stated = context.source.uint32At(start);
    long statedEnd = start + stated;
    if (statedEnd >= headerEnd && statedEnd <= fileEnd) {
      int trusted = (int) statedEnd;
      if (context.starts.isBoundary(trusted)
          || contentEndsAt(headerEnd, trusted)
          || isFilledByPixels(header, trusted - headerEnd)) {
        return trusted;
      }
    }
    OptionalInt next = context.starts.next(headerEnd);
    if (next.isPresent()) {
      context.lengthDisagrees(place, stated, next.getAsInt() - start);
      return next.getAsInt();
    }
    if (statedEnd > fileEnd && !contentEndsAt(headerEnd, fileEnd)) {
      context.cutOff(place, stated, fileEnd - start);
      return fileEnd;
    }
    if (statedEnd >= headerEnd && statedEnd <= fileEnd && isPadding((int) statedEnd)) {
      return (int) statedEnd;
    }
    context.lengthDisagrees(place, stated, fileEnd - start);
    return fileEnd;
  }

  /** Whether a WSQ (FF A1) or JPEG (FF D9) codestream ends just before. */
  private boolean contentEndsAt(int headerEnd, int end) {
    return end - 2 >= headerEnd
        && (context.source.startsWith(end - 2, 0xFF, 0xA1)
            || context.source.startsWith(end - 2, 0xFF, 0xD9));
  }

  /**
   * Whether these are the bytes of an uncompressed image of the stated size, 8 bits or 1 bit a
   * pixel.
   */
  private static boolean isFilledByPixels(List<BinaryHeader.Value> header, int bytes) {
    long width = number(header, HORIZONTAL_LINE_LENGTH);
    long height = number(header, VERTICAL_LINE_LENGTH);
    return bytes > 0 && (bytes == width * height || bytes == (width + 7) / 8 * height);
  }

  private static long number(List<BinaryHeader.Value> header, int field) {
    return header.stream()
        .filter(value -> value.row().number().field() == field)
        .mapToLong(BinaryHeader.Value::number)
        .findFirst()
        .orElse(0);
  }

  /**
   * Whether only a line end, blanks or an end-of-file character follow, as mail programs append
   * them. Zeros do not count: an image may end in them.
   */
  private boolean isPadding(int from) {
    for (int i = from; i < context.source.length(); i++) {
      switch (context.source.byteAt(i)) {
        case ' ', '\t', '\r', '\n', END_OF_FILE -> {}
        default -> {
          return false;
        }
      }
    }
    return true;
  }

  private List<Field> fields(List<BinaryHeader.Value> header) {
    Map<FieldNumber, List<Subfield>> values = new LinkedHashMap<>();
    for (BinaryHeader.Value value : header) {
      ByteRange range = value.range(context.source);
      values
          .computeIfAbsent(value.row().number(), number -> new ArrayList<>())
          .add(new Subfield(List.of(new Item(Long.toString(value.number()), range)), range));
    }
    List<Field> fields = new ArrayList<>();
    values.forEach(
        (number, subfields) -> {
          ByteRange range =
              ByteRange.between(
                  subfields.get(0).range().offset(),
                  subfields.get(subfields.size() - 1).range().end());
          fields.add(new Field(number, "", range, range, subfields));
        });
    return fields;
  }
}
