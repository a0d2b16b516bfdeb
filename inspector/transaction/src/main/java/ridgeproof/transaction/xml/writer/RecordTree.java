package ridgeproof.transaction.xml.writer;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.layout.FieldRow;
import ridgeproof.spec.layout.RecordTypeRow.Encoding;
import ridgeproof.spec.layout.Reference;
import ridgeproof.spec.xml.XmlForm;
import ridgeproof.spec.xml.XmlRow;
import ridgeproof.spec.xml.XmlStep;
import ridgeproof.transaction.record.Field;
import ridgeproof.transaction.record.Item;
import ridgeproof.transaction.record.LogicalRecord;
import ridgeproof.transaction.record.Subfield;

/** A record as elements. */
final class RecordTree {

  /** An element and what it says. */
  private record Said(XmlRow row, int repetition, String text) {}

  private static final int MAX_ALIKE = 10_000;

  private final SpecTables tables;
  private final LogicalRecord record;
  private final Optional<LogicalRecord> header;
  private final List<Loss> losses;
  private final Branch root;

  RecordTree(
      SpecTables tables, LogicalRecord record, Optional<LogicalRecord> header, List<Loss> losses) {
    this.tables = tables;
    this.record = record;
    this.header = header;
    this.losses = losses;
    this.root = new Branch(tables.xml().element(record.type()));
  }

  Branch build() {
    for (XmlRow row : tables.xml().rows(record.type())) {
      if (row.use() == XmlRow.Use.TYPE) {
        say(
            new Said(row, 0, row.form().toElement(Integer.toString(record.type())).orElseThrow()),
            0);
      }
    }
    record.fields().stream().filter(field -> !isLength(field)).forEach(this::add);
    return root;
  }

  private boolean isLength(Field field) {
    return tables.xml().rows(record.type()).stream()
        .anyMatch(row -> row.use() == XmlRow.Use.TYPE && row.field().equals(field.number()));
  }

  private void add(Field field) {
    List<XmlRow> rows =
        tables.xml().rows(record.type()).stream()
            .filter(row -> row.field().equals(field.number()) && row.isWritten())
            .filter(row -> row.when().map(c -> c.holds(this::values)).orElse(true))
            .toList();
    if (rows.isEmpty()) {
      lose(field, "no element of the XML encoding is known for it");
    } else if (field.isData()) {
      XmlRow row = rows.get(0);
      root.at(row.steps(), numbers(row, 0, 0)).hold(record.dataOf(field));
    } else {
      addText(field, rows);
    }
  }

  private void addText(Field field, List<XmlRow> rows) {
    boolean unlike = rows.stream().anyMatch(row -> row.use() == XmlRow.Use.FIRST);
    List<Subfield> subfields = withoutFillers(field);
    // Which element is next, for each path by which subfields are counted.
    Map<List<XmlStep>, Integer> next = new HashMap<>();
    for (int i = 0; i < subfields.size(); i++) {
      boolean first = unlike && i == 0;
      List<XmlRow> own =
          rows.stream().filter(row -> !unlike || first == (row.use() == XmlRow.Use.FIRST)).toList();
      List<Said> said = said(field, subfields.get(i), own);
      Optional<Integer> place =
          said.isEmpty() ? Optional.empty() : place(said, next.getOrDefault(counted(said), 0));
      if (place.isPresent()) {
        said.forEach(one -> say(one, place.get()));
        constants(rows, place.get());
        next.put(counted(said), place.get() + 1);
      } else if (!said.isEmpty()) {
        lose(field, "the XML encoding has no room for one more subfield");
      }
    }
  }

  private static List<XmlStep> counted(List<Said> said) {
    XmlRow row = said.get(0).row();
    return row.steps().subList(0, row.subfieldDepth());
  }

  /** Where the elements of a subfield find room: none that is there may say something else. */
  private Optional<Integer> place(List<Said> said, int from) {
    boolean counted = said.stream().anyMatch(one -> one.row().subfieldDepth() > 0);
    for (int i = counted ? from : 0; i < (counted ? from + MAX_ALIKE : 1); i++) {
      int number = i;
      boolean fits =
          said.stream()
              .allMatch(
                  one ->
                      root.hasRoom(
                          one.row().steps(),
                          numbers(one.row(), number, one.repetition()),
                          one.text(),
                          one.row().use() == XmlRow.Use.WITH_OTHERS));
      if (fits && (counted || from == 0)) {
        return Optional.of(number);
      }
    }
    return Optional.empty();
  }

  private void say(Said said, int subfield) {
    root.at(said.row().steps(), numbers(said.row(), subfield, said.repetition()))
        .say(said.text(), said.row().use() == XmlRow.Use.WITH_OTHERS);
  }

  private void constants(List<XmlRow> rows, int subfield) {
    for (XmlRow row : rows) {
      if (row.form() instanceof XmlForm.Constant constant) {
        say(new Said(row, 0, constant.text()), subfield);
      }
    }
  }

  private static int[] numbers(XmlRow row, int subfield, int repetition) {
    int[] numbers = new int[row.steps().size()];
    for (int i = 0; i < numbers.length; i++) {
      numbers[i] =
          i + 1 == row.subfieldDepth()
              ? subfield
              : i + 1 == row.itemsDepth() ? repetition : row.steps().get(i).nth().orElse(1) - 1;
    }
    return numbers;
  }

  private List<Said> said(Field field, Subfield subfield, List<XmlRow> rows) {
    List<Said> said = new ArrayList<>();
    List<Item> items = subfield.items();
    for (int i = 1; i <= items.size(); i++) {
      String text = items.get(i - 1).text();
      // A place that is left empty between others needs no element to be seen.
      if (text.isEmpty() && i < items.size()) {
        continue;
      }
      if (text.isEmpty()
          && items.size() > 1
          && items.stream().allMatch(it -> it.text().isEmpty())) {
        continue;
      }
      List<Said> of = of(text, i, rows);
      if (of.isEmpty()) {
        of = asItIs(text, i, rows);
        lose(
            field,
            of.isEmpty()
                ? "no element of the XML encoding is known for item " + i
                : "item " + i + " is kept as it is and does not have the form of its element");
      }
      said.addAll(of);
    }
    return said;
  }

  private List<Said> of(String text, int item, List<XmlRow> rows) {
    for (XmlRow row : rows) {
      int repetition = repetition(row, item);
      boolean any =
          text.isEmpty() || row.pattern().map(p -> p.matcher(text).matches()).orElse(true);
      if (row.part() == 0 && repetition >= 0 && any && !(row.form() instanceof XmlForm.Constant)) {
        Optional<String> element = text.isEmpty() ? Optional.of("") : row.form().toElement(text);
        if (element.isPresent()) {
          return each(row, repetition, element.get());
        }
      }
    }
    List<XmlRow> parts =
        rows.stream()
            .filter(row -> row.part() > 0 && row.item() == item)
            .sorted(Comparator.comparingInt(XmlRow::part))
            .toList();
    return parts.isEmpty() ? List.of() : parted(text, parts);
  }

  /** A value that no element has the form for, in the element that would carry a proper one. */
  private static List<Said> asItIs(String text, int item, List<XmlRow> rows) {
    return rows.stream()
        .filter(row -> !(row.form() instanceof XmlForm.Constant) && row.part() <= 1)
        .filter(row -> repetition(row, item) >= 0)
        .findFirst()
        .map(row -> each(row, repetition(row, item), text))
        .orElse(List.of());
  }

  private static List<Said> each(XmlRow row, int repetition, String text) {
    return List.of(new Said(row, repetition, text));
  }

  private static int repetition(XmlRow row, int item) {
    int over = item - row.item();
    if (row.itemsDepth() == 0 || row.part() > 0) {
      return over == 0 ? 0 : -1;
    }
    return over >= 0 && over % row.period() == 0 ? over / row.period() : -1;
  }

  private static List<Said> parted(String text, List<XmlRow> parts) {
    if (text.isEmpty()) {
      return List.of(new Said(parts.get(0), 0, ""));
    }
    List<Said> said = new ArrayList<>();
    List<List<String>> all = new Parts(parts).of(text).orElse(List.of());
    for (int k = 0; k < all.size(); k++) {
      for (int i = 0; i < parts.size(); i++) {
        String part = all.get(k).get(i);
        if (!part.isEmpty()) {
          said.add(new Said(parts.get(i), k, parts.get(i).form().toElement(part).orElse(part)));
        }
      }
    }
    return said;
  }

  /** Numbers of a binary record that only fill its fixed count are not written. */
  private List<Subfield> withoutFillers(Field field) {
    Optional<FieldRow> row =
        tables.layout(record.type()).rows().stream()
            .filter(one -> one.number().equals(field.number()) && one.item().isEmpty())
            .findFirst();
    int end = field.subfields().size();
    if (record.encoding() == Encoding.BINARY && row.isPresent() && row.get().bytes().isPresent()) {
      String filler = Long.toString((1L << Byte.SIZE * row.get().bytes().getAsInt()) - 1);
      while (end > 1 && field.subfields().get(end - 1).text(1).equals(filler)) {
        end--;
      }
    }
    return field.subfields().subList(0, end);
  }

  private void lose(Field field, String reason) {
    Loss loss = new Loss(record.ordinal(), record.type(), Optional.of(field.number()), reason);
    if (!losses.contains(loss)) {
      losses.add(loss);
    }
  }

  private List<String> values(Reference reference) {
    if (reference instanceof Reference.OfField field) {
      return texts(field.number(), 1);
    }
    return reference instanceof Reference.OfItem item
        ? texts(item.number(), item.item())
        : List.of();
  }

  private List<String> texts(FieldNumber number, int item) {
    Optional<LogicalRecord> holder =
        number.recordType() == record.type() ? Optional.of(record) : header;
    return holder.flatMap(one -> one.field(number)).stream()
        .flatMap(field -> field.subfields().stream())
        .map(subfield -> subfield.text(item))
        .filter(text -> !text.isEmpty())
        .toList();
  }
}
