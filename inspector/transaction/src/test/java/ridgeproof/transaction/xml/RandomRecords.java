package ridgeproof.transaction.xml;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Collectors;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.xml.XmlForm;
import ridgeproof.spec.xml.XmlRow;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.writer.FieldDraft;
import ridgeproof.transaction.writer.RecordDraft;

/** Records with any of the fields that the mapping knows, their values as its forms allow. */
final class RandomRecords {

  private static final String CHARACTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcxyz0123456789 &<>'\"-.,/";
  private static final int MAX_SUBFIELDS = 3;
  private static final int TRIES = 40;

  private final SpecTables tables;
  private final Random random;

  RandomRecords(SpecTables tables, Random random) {
    this.tables = tables;
    this.random = random;
  }

  RecordDraft header() {
    return RecordDraft.tagged(
        1,
        List.of(
            text(1, 1, ""),
            text(1, 2, "0502"),
            text(1, 3, ""),
            text(1, 4, "FAUF"),
            text(1, 5, "20260302"),
            text(1, 7, "THP000000"),
            text(1, 8, "THP000001"),
            text(1, 9, "PILOT-0001"),
            text(1, 11, "00.00"),
            text(1, 12, "00.00")));
  }

  private static FieldDraft text(int type, int field, String value) {
    return FieldDraft.text(new FieldNumber(type, field), List.of(List.of(value)));
  }

  /** A record of a type that is written as tagged text. */
  RecordDraft record(int type, int idc) {
    Map<FieldNumber, List<XmlRow>> byField =
        tables.xml().rows(type).stream()
            .filter(XmlRow::isWritten)
            .collect(Collectors.groupingBy(XmlRow::field, TreeMap::new, Collectors.toList()));
    List<FieldDraft> drafts = new ArrayList<>();
    drafts.add(text(type, 1, ""));
    drafts.add(text(type, 2, String.format(Locale.ROOT, "%02d", idc)));
    byField.forEach(
        (number, rows) -> {
          if (number.field() > 2 && random.nextInt(3) == 0) {
            drafts.add(field(number, rows));
          }
        });
    return RecordDraft.tagged(type, drafts);
  }

  private FieldDraft field(FieldNumber number, List<XmlRow> rows) {
    if (rows.get(0).form() == XmlForm.Plain.DATA) {
      byte[] bytes = new byte[random.nextInt(3000)];
      random.nextBytes(bytes);
      return FieldDraft.data(number, ByteSource.of(bytes));
    }
    int items = rows.stream().mapToInt(XmlRow::item).max().orElse(1);
    boolean repeats = rows.stream().anyMatch(row -> row.subfieldDepth() > 0);
    List<List<String>> subfields = new ArrayList<>();
    int count = repeats ? 1 + random.nextInt(MAX_SUBFIELDS) : 1;
    for (int i = 0; i < count; i++) {
      List<String> texts = new ArrayList<>();
      int last = 1 + random.nextInt(items);
      for (int item = 1; item <= last; item++) {
        int wanted = item;
        boolean blank = item < last && random.nextInt(6) == 0;
        texts.add(blank ? "" : item(rows.stream().filter(row -> row.item() == wanted).toList()));
      }
      subfields.add(texts);
    }
    return FieldDraft.text(number, subfields);
  }

  private String item(List<XmlRow> rows) {
    List<XmlRow> parts = rows.stream().filter(row -> row.part() > 0).toList();
    if (!parts.isEmpty() && random.nextBoolean()) {
      StringBuilder joined = new StringBuilder();
      for (XmlRow part : parts) {
        joined.append(joined.length() == 0 ? "" : part.before()).append(value(part));
      }
      return joined.toString();
    }
    return rows.isEmpty() ? word() : value(rows.get(random.nextInt(rows.size())));
  }

  private String value(XmlRow row) {
    for (int i = 0; i < TRIES; i++) {
      String value = value(row.form());
      if (row.pattern().map(pattern -> pattern.matcher(value).matches()).orElse(true)) {
        return value;
      }
    }
    return word();
  }

  private String value(XmlForm form) {
    Optional<String> word = Optional.empty();
    if (form instanceof XmlForm.Moment moment) {
      String day =
          LocalDate.of(1950 + random.nextInt(80), 1, 1)
              .plusDays(random.nextInt(365))
              .toString()
              .replace("-", "");
      word =
          Optional.of(
              switch (moment) {
                case DATE -> day;
                case DATE_TIME -> day + "101500Z";
                case YEAR_AND_MONTH -> day.substring(0, 6) + "00";
                case YEAR -> day.substring(0, 4) + "0000";
              });
    } else if (form instanceof XmlForm.Indicator indicator) {
      word = Optional.of(indicator.yes());
    }
    return word.orElseGet(
        () ->
            switch (random.nextInt(4)) {
              case 0 -> Integer.toString(random.nextInt(10));
              case 1 -> String.format(Locale.ROOT, "%03d", random.nextInt(1000));
              case 2 -> Integer.toString(10 + random.nextInt(90));
              default -> word();
            });
  }

  private String word() {
    StringBuilder word = new StringBuilder();
    int length = 1 + random.nextInt(8);
    for (int i = 0; i < length; i++) {
      word.append(CHARACTERS.charAt(random.nextInt(CHARACTERS.length())));
    }
    // Blanks at the ends do not count in every element.
    return word.toString().isBlank() ? "A" : word.toString().strip();
  }
}
