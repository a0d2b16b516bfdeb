package ridgeproof.transaction.xml;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.TreeMap;
import ridgeproof.finding.Location;
import ridgeproof.finding.Observed;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.layout.FieldRow;
import ridgeproof.spec.layout.RecordTypeRow.Encoding;
import ridgeproof.spec.layout.Reference;
import ridgeproof.spec.xml.XmlElement;
import ridgeproof.spec.xml.XmlForm;
import ridgeproof.spec.xml.XmlRow;
import ridgeproof.spec.xml.XmlTables.RecordElement;
import ridgeproof.transaction.record.ByteRange;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.record.Field;
import ridgeproof.transaction.record.LogicalRecord;
import ridgeproof.transaction.record.Notation;

/** A record while its elements come in. */
final class RecordBuilder {

  private static final int NO_SUBFIELD = -1;
  private static final int FIRST_SUBFIELD = -2;
  private static final FieldNumber TYPE_OF_TRANSACTION = new FieldNumber(1, 4);

  private final XmlContext context;
  private final RecordElement record;
  private final int ordinal;
  private final int start;
  private final List<OpenElement> open = new ArrayList<>();
  private final Map<FieldNumber, FieldBuilder> fields = new TreeMap<>();
  private final List<Field> data = new ArrayList<>();
  private int elements;

  /**
   * @param start where the element of the record begins
   * @param textStart where its content begins
   */
  RecordBuilder(XmlContext context, int ordinal, RecordElement record, int start, int textStart) {
    this.context = context;
    this.record = record;
    this.ordinal = ordinal;
    this.start = start;
    open.add(new OpenElement(context.xml.element(record.type()), 0, 1, start, textStart));
  }

  /** How many elements are open, that of the record included. */
  int depth() {
    return open.size();
  }

  /** Whether the innermost element is one that the mapping knows. */
  boolean isWithinKnown() {
    return open.get(open.size() - 1).element != null;
  }

  /**
   * An element begins.
   *
   * @return what the mapping knows of it, or null
   */
  XmlElement begin(Names.Name name, int from, int textStart) {
    OpenElement parent = open.get(open.size() - 1);
    parent.holdsElements = true;
    XmlElement element = parent.element == null ? null : parent.element.child(name.local());
    int nth = element == null ? 1 : parent.count(name.local());
    if (element != null) {
      checkPlace(parent, element, nth, context.absolute(from, textStart));
    } else if (parent.element != null) {
      reportUnknown(parent, name, context.absolute(from, textStart));
    }
    open.add(new OpenElement(element, ++elements, nth, from, textStart));
    return element;
  }

  private void checkPlace(OpenElement parent, XmlElement element, int nth, ByteRange range) {
    boolean late = parent.isLate(element.order());
    if (late) {
      context.reportOnce(
          "RP-XML-009",
          ordinal + element.qualified(),
          place().at(range),
          Observed.of(element.qualified()),
          "before the element that precedes it here");
    } else if (nth == 2 && !element.mayRepeat()) {
      context.reportOnce(
          "RP-XML-010",
          ordinal + element.qualified(),
          place().at(range),
          Observed.of("a second " + element.qualified()),
          "one " + element.qualified());
    }
  }

  private void reportUnknown(OpenElement parent, Names.Name name, ByteRange range) {
    boolean mapped = context.xml.isMapped(record.type());
    String shown = name.prefix().isEmpty() ? name.local() : name.prefix() + ":" + name.local();
    context.reportOnce(
        mapped ? "RP-XML-005" : "RP-XML-016",
        mapped ? parent.element.qualified() + "/" + name.local() : String.valueOf(ordinal),
        place().at(range),
        Observed.personal(shown),
        "an element that " + parent.element.qualified() + " may hold");
  }

  /**
   * The innermost element ends.
   *
   * @param textEnd where its end tag begins
   * @param end the first byte after its end tag
   */
  void end(int textEnd, int end) {
    OpenElement frame = open.get(open.size() - 1);
    if (frame.element != null && !frame.holdsElements && !frame.element.rows().isEmpty()) {
      take(frame, Math.max(frame.textStart, textEnd), end);
    }
    open.remove(open.size() - 1);
  }

  private void take(OpenElement frame, int textEnd, int end) {
    ByteSource raw = context.source.slice(frame.textStart, textEnd - frame.textStart);
    ByteRange element = context.absolute(frame.start, end);
    String text = null;
    for (XmlRow row : frame.element.rows()) {
      if (!row.isRead() || !holds(row)) {
        continue;
      }
      if (row.form() == XmlForm.Plain.DATA) {
        data.add(data(row, frame.textStart, textEnd, element));
        continue;
      }
      if (!context.admitItem()) {
        return;
      }
      text = text == null ? text(raw) : text;
      add(row, frame, text, raw.range(), element);
    }
  }

  private String text(ByteSource raw) {
    OptionalInt odd = context.text.firstOdd(raw);
    if (odd.isPresent()) {
      int at = raw.origin() + odd.getAsInt();
      context.log.add(
          "RP-STR-019",
          place().at(new ByteRange(at, 1)),
          Observed.of(
              String.format(java.util.Locale.ROOT, "byte 0x%02X", raw.byteAt(odd.getAsInt()))),
          "UTF-8 characters");
    }
    return context.text.of(raw);
  }

  private void add(XmlRow row, OpenElement frame, String text, ByteRange value, ByteRange element) {
    String said =
        text.isEmpty()
            ? text
            : row.form()
                .toField(text)
                .orElseGet(
                    () -> {
                      reportForm(row, text, value);
                      return text;
                    });
    if (said.isEmpty() && !text.isEmpty()) {
      return; // what the field says by not being there
    }
    int subfield =
        row.use() == XmlRow.Use.FIRST
            ? FIRST_SUBFIELD
            : row.subfieldDepth() == 0 ? NO_SUBFIELD : open.get(row.subfieldDepth()).id;
    int repeated = row.itemsDepth() == 0 ? 0 : open.get(row.itemsDepth()).id;
    fields
        .computeIfAbsent(row.field(), FieldBuilder::new)
        .add(row, subfield, repeated, said, value, element);
    if (row.field().equals(TYPE_OF_TRANSACTION)) {
      context.declareType(said);
    }
  }

  private void reportForm(XmlRow row, String text, ByteRange value) {
    String shown = "\"" + text + "\"";
    context.log.add(
        "RP-XML-007",
        place().in(row.field()).at(value),
        context.isPublic(row.field(), row.item()) ? Observed.of(shown) : Observed.personal(shown),
        row.form().inWords());
  }

  /** Whether the row holds here; conditions look at the type of transaction alone. */
  private boolean holds(XmlRow row) {
    int nth = row.steps().get(row.steps().size() - 1).nth().orElse(0);
    return (nth == 0 || nth == open.get(open.size() - 1).nth)
        && row.when()
            .filter(condition -> record.type() == 2)
            .map(condition -> condition.holds(this::values))
            .orElse(true);
  }

  private List<String> values(Reference reference) {
    return reference.equals(new Reference.OfField(TYPE_OF_TRANSACTION))
            && !context.typeOfTransaction().isEmpty()
        ? List.of(context.typeOfTransaction())
        : List.of();
  }

  private Field data(XmlRow row, int textStart, int textEnd, ByteRange element) {
    Base64Run run = context.runs.within(textStart, textEnd);
    run.firstOdd(context.source, textEnd)
        .ifPresent(
            odd ->
                context.log.add(
                    "RP-XML-006",
                    place().in(row.field()).at(odd.range()),
                    Observed.of(odd.what()),
                    "Base64 of whole bytes"));
    return Field.inBase64(
        row.field(),
        tag(row.field()),
        element,
        context.absolute(textStart, textEnd),
        run.decodedLength(context.source, textEnd));
  }

  private Location place() {
    return Location.inRecord(ordinal, record.type());
  }

  private String tag(FieldNumber number) {
    return encoding() == Encoding.BINARY ? "" : number.toString();
  }

  private Encoding encoding() {
    return context
        .tables
        .recordType(record.type())
        .map(row -> row.encoding())
        .orElse(Encoding.TAGGED);
  }

  /**
   * The record as far as it has come.
   *
   * @param end the first byte after it
   */
  LogicalRecord build(int end) {
    List<Field> built = new ArrayList<>();
    fields.forEach(
        (number, field) ->
            field.build(tag(number), least(number), filler(number)).ifPresent(built::add));
    built.addAll(data);
    ByteRange range = context.absolute(start, end);
    LogicalRecord read =
        new LogicalRecord(
            ordinal,
            record.type(),
            encoding(),
            OptionalInt.empty(),
            range,
            built,
            List.of(),
            context.source.slice(start, end - start),
            Notation.XML);
    return record.type() == 1 ? read : read.withIdc(read.number(2));
  }

  /** Binary records hold numbers of fixed count, which the XML may leave out. */
  private int least(FieldNumber number) {
    return encoding() == Encoding.BINARY
        ? layout(number).map(row -> row.maxOccurs().orElse(1)).orElse(1)
        : 1;
  }

  private String filler(FieldNumber number) {
    int bytes = layout(number).map(row -> row.bytes().orElse(1)).orElse(1);
    return Long.toString((1L << Byte.SIZE * bytes) - 1);
  }

  private java.util.Optional<FieldRow> layout(FieldNumber number) {
    return context.tables.layout(record.type()).rows().stream()
        .filter(row -> row.number().equals(number) && row.item().isEmpty())
        .findFirst();
  }
}
