package ridgeproof.transaction.reader;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import ridgeproof.finding.Location;
import ridgeproof.finding.Observed;
import ridgeproof.finding.Quantity;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.layout.RecordTypeRow.Encoding;
import ridgeproof.transaction.record.ByteRange;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.record.Field;
import ridgeproof.transaction.record.LogicalRecord;
import ridgeproof.transaction.record.Separator;
import ridgeproof.transaction.record.Subfield;
import ridgeproof.transaction.record.WholeNumber;

/** Reads one record whose fields are led by their numbers. Made anew for each record. */
final class TaggedRecordReader {

  private final ParseContext context;
  private final ByteSource source;
  private final int start;
  private final int ordinal;
  private final int type;
  private final OptionalInt statedLength;
  private final boolean lengthHolds;
  private final boolean endMissing;
  private final int limit;
  private final List<Field> fields = new ArrayList<>();
  private final List<ByteRange> unread = new ArrayList<>();
  private final Set<FieldNumber> seen = new HashSet<>();
  private int position;
  private boolean ended;

  /**
   * @param start where a tag opens a record of the type
   */
  TaggedRecordReader(ParseContext context, int start, int ordinal, int type) {
    this.context = context;
    this.source = context.source;
    this.start = start;
    this.ordinal = ordinal;
    this.type = type;
    int valueStart = Tag.at(source, start, source.length()).orElseThrow().valueStart();
    this.statedLength = statedLength(valueStart);
    int statedEnd = statedLength.isPresent() ? start + statedLength.getAsInt() : -1;
    // Behind the first tag: in 14.001, a length of 1 would lead to another tag.
    boolean plausible = statedEnd > valueStart && statedEnd <= source.length();
    boolean leadsOn =
        plausible
            && (context.starts.isBoundary(statedEnd)
                || context.starts.afterMissingEnd(statedEnd).isPresent());
    this.endMissing =
        plausible && !leadsOn && context.starts.afterMissingEnd(statedEnd - 1).isPresent();
    this.lengthHolds = leadsOn || endMissing;
    this.limit = lengthHolds ? statedEnd - (endMissing ? 1 : 0) : source.length();
  }

  /** Reads to the end of the record, by the best evidence there is. */
  LogicalRecord read() {
    position = start;
    while (!ended && position < limit && !context.itemLimitReached()) {
      Optional<Tag> tag = Tag.at(source, position, limit);
      if (tag.isEmpty()) {
        skipUntagged();
      } else if (position > start && tag.get().opensRecord() && !lengthHolds) {
        ended = true;
      } else if (context.isDataField(tag.get().number(), type)) {
        readData(tag.get());
      } else {
        readText(tag.get());
      }
    }
    if (!ended && position < limit) {
      unread.add(context.absolute(position, limit));
      position = limit;
    }
    reportEnd();
    reportOrder();
    return new LogicalRecord(
        ordinal,
        type,
        Encoding.TAGGED,
        idc(),
        context.absolute(start, position),
        fields,
        unread,
        source.slice(start, position - start));
  }

  private OptionalInt statedLength(int from) {
    int to = from;
    while (to < source.length() && to - from <= 9 && !isFieldEnd(source.byteAt(to))) {
      to++;
    }
    return WholeNumber.parse(source.latin1(from, to - from));
  }

  private OptionalInt idc() {
    if (type == 1) {
      return OptionalInt.empty();
    }
    return fields.stream()
        .filter(field -> field.number().equals(new FieldNumber(type, 2)))
        .findFirst()
        .map(field -> WholeNumber.parse(field.text()))
        .orElse(OptionalInt.empty());
  }

  private void readText(Tag tag) {
    int tagStart = position;
    int stop = valueEnd(tag);
    Location place = place().in(tag.number()).at(context.absolute(tagStart, stop));
    checkTag(tag, place);
    List<Subfield> subfields = new TextValue(context).read(tag.valueStart(), stop, place);
    position = stop < limit && isFieldEnd(source.byteAt(stop)) ? stop + 1 : stop;
    fields.add(
        new Field(
            tag.number(),
            tag.text(),
            context.absolute(tagStart, position),
            context.absolute(tag.valueStart(), stop),
            subfields));
    if (stop < limit && source.byteAt(stop) == Separator.FS && !continuesAfter(stop)) {
      ended = true;
    }
  }

  /** Where the value ends: a GS, the FS that ends the record, or the record's limit. */
  private int valueEnd(Tag tag) {
    for (int i = tag.valueStart(); i < limit; i++) {
      int value = source.byteAt(i);
      if (value == Separator.GS) {
        return i;
      }
      if (value == Separator.FS) {
        if (lengthHolds && i + 1 < limit && Tag.at(source, i + 1, limit).isEmpty()) {
          reportStray(i, "a character of the value");
          continue;
        }
        return i;
      }
      if (value == '.' && i > tag.valueStart() && swallowsTag(i, tag)) {
        return tagBefore(i);
      }
    }
    return limit;
  }

  /**
   * Whether the point belongs to a later tag of this record, which would mean that a separator
   * before it is gone.
   */
  private boolean swallowsTag(int point, Tag current) {
    int from = tagBefore(point);
    if (from < current.valueStart()) {
      return false;
    }
    Optional<Tag> inner = Tag.at(source, from, limit);
    if (inner.isEmpty()
        || inner.get().number().recordType() != type
        || inner.get().text().length() < current.text().length()
        || inner.get().number().compareTo(current.number()) <= 0) {
      return false;
    }
    context.log.add(
        "RP-STR-007",
        place().in(inner.get().number()).at(context.absolute(from, from + 1)),
        Observed.of("no separator before " + inner.get().text()),
        "GS (0x1D)");
    return true;
  }

  private int tagBefore(int point) {
    return point - Integer.toString(type).length();
  }

  /**
   * Whether an FS is followed by another field of this record, so that it stands where a GS
   * belongs.
   */
  private boolean continuesAfter(int stop) {
    Optional<Tag> next = Tag.at(source, stop + 1, limit);
    if (next.isEmpty() || next.get().opensRecord() || next.get().number().recordType() != type) {
      return false;
    }
    reportStray(stop, "GS (0x1D)");
    return true;
  }

  private void reportStray(int at, String required) {
    context.log.add(
        "RP-STR-007",
        place().at(context.absolute(at, at + 1)),
        Observed.of("FS (0x1C) inside the record"),
        required);
  }

  private void checkTag(Tag tag, Location place) {
    if (tag.number().recordType() != type) {
      context.log.add(
          "RP-STR-008", place, Observed.of(tag.text()), "a tag that begins with " + type + ".");
    }
    if (!seen.add(tag.number())) {
      context.log.add("RP-STR-010", place, Observed.of(tag.text() + " again"), "one field");
    }
  }

  private void skipUntagged() {
    int stop = position;
    while (stop < limit && !isFieldEnd(source.byteAt(stop))) {
      stop++;
    }
    int end = Math.min(limit, stop + 1);
    ByteRange range = context.absolute(position, end);
    unread.add(range);
    context.log.add(
        "RP-STR-009",
        place().at(range),
        Observed.of(Quantity.of(range.length(), "byte") + " without a field number"),
        "a tag such as " + type + ".003:");
    if (stop < limit && source.byteAt(stop) == Separator.FS && !continuesAfter(stop)) {
      ended = true;
    }
    position = end;
  }

  private void readData(Tag tag) {
    int tagStart = position;
    int end = dataEnd(tag.valueStart());
    boolean closed = end > tag.valueStart() && source.byteAt(end - 1) == Separator.FS;
    fields.add(
        new Field(
            tag.number(),
            tag.text(),
            context.absolute(tagStart, end),
            context.absolute(tag.valueStart(), closed ? end - 1 : end),
            List.of()));
    position = end;
    ended = true;
  }

  private int dataEnd(int from) {
    if (lengthHolds) {
      return limit;
    }
    OptionalInt next = context.starts.next(from);
    if (next.isPresent()) {
      return next.getAsInt();
    }
    int fileEnd = source.length();
    int statedEnd = statedLength.isPresent() ? start + statedLength.getAsInt() : fileEnd;
    if (statedEnd > from && statedEnd < fileEnd && source.byteAt(statedEnd - 1) == Separator.FS) {
      return statedEnd;
    }
    return fileEnd;
  }

  private void reportEnd() {
    Location place = place().at(context.absolute(start, position));
    int length = position - start;
    boolean closed = source.byteAt(position - 1) == Separator.FS;
    boolean cut =
        !closed
            && position == source.length()
            && (statedLength.isEmpty() || statedLength.getAsInt() > length);
    if (cut) {
      statedLength.ifPresentOrElse(
          stated -> context.cutOff(place, stated, length), () -> context.cutOff(place, length));
      return;
    }
    if (!closed) {
      context.log.add(
          "RP-STR-006",
          place.at(context.absolute(position - 1, position)),
          Observed.of(Separator.name(source.byteAt(position - 1))),
          "FS (0x1C)");
    }
    if (statedLength.isEmpty()) {
      context.log.add("RP-STR-005", place, Observed.of("no readable LEN"), "LEN " + length);
    } else if (statedLength.getAsInt() != length && !endMissing) {
      context.lengthDisagrees(
          place().in(new FieldNumber(type, 1)).at(fields.get(0).value()),
          statedLength.getAsInt(),
          length);
    }
  }

  private void reportOrder() {
    FieldNumber previous = new FieldNumber(type, 0);
    for (Field field : fields) {
      if (field.number().recordType() == type && field.number().compareTo(previous) < 0) {
        context.log.add(
            "RP-STR-011",
            place().in(field.number()).at(field.range()),
            Observed.of(field.number() + " after " + previous),
            "ascending field numbers");
        return;
      }
      previous = field.number().recordType() == type ? field.number() : previous;
    }
  }

  private Location place() {
    return Location.inRecord(ordinal, type);
  }

  private static boolean isFieldEnd(int value) {
    return value == Separator.GS || value == Separator.FS;
  }
}
