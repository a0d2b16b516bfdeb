package ridgeproof.spec.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.layout.FieldRow;
import ridgeproof.spec.layout.Presence.Clause;
import ridgeproof.spec.layout.Presence.Demand;
import ridgeproof.spec.layout.RecordTypeRow;
import ridgeproof.spec.layout.ValueRule;
import ridgeproof.spec.layout.ValueRule.AnyOf;
import ridgeproof.spec.layout.ValueRule.CalendarDate;
import ridgeproof.spec.layout.ValueRule.GreenwichTime;
import ridgeproof.spec.layout.ValueRule.InTable;
import ridgeproof.spec.layout.ValueRule.Literal;
import ridgeproof.spec.published.SampleMessages.Tagged;
import ridgeproof.spec.rule.Aspect;
import ridgeproof.spec.table.Source.Knowledge;

/**
 * The rows of the layouts against the published sample messages and schemas: numbers and mnemonics
 * both ways, and what a row claims to be matched.
 */
class LayoutsAgreeWithMessagesTest {

  private static final SpecTables TABLES = SpecTables.open();

  /** The edition that the messages state in field 1.002. */
  private static final int EDITION = 500;

  private static final int DESCRIPTIVE_TEXT = 2;

  private static List<FieldRow> rows() {
    return TABLES.recordTypes().stream()
        .map(RecordTypeRow::type)
        .flatMap(type -> TABLES.layout(type).rows().stream())
        .filter(row -> !row.isRange())
        .toList();
  }

  @Test
  void eachTagOfTheMessagesIsAFieldWithThatMnemonic() {
    SampleMessages messages = new SampleMessages(PublishedLists.open());
    Differences differences = new Differences("mnemonic of field", "missing item");
    for (String tag : messages.tags()) {
      Tagged field = messages.field(tag).orElseThrow();
      FieldNumber number = FieldNumber.parse(tag);
      List<FieldRow> own =
          TABLES.layout(number.recordType()).rows().stream()
              .filter(row -> row.number().equals(number) && !row.isRange())
              .toList();
      Set<String> names = mnemonics(own, row -> row.item().isEmpty());
      if (!field.mnemonics.isEmpty() && names.stream().noneMatch(field.mnemonics::contains)) {
        differences.add("mnemonic of field", "layout", tag, names + ", " + field.mnemonics);
      }
      Set<String> items = mnemonics(own, row -> row.item().isPresent());
      field.items.keySet().stream()
          .filter(item -> !items.contains(item) && !names.contains(item))
          .forEach(item -> differences.add("missing item", "layout", tag + " " + item, ""));
    }
    differences.assertListed();
  }

  private static Set<String> mnemonics(List<FieldRow> rows, Predicate<FieldRow> which) {
    return rows.stream()
        .filter(which)
        .map(FieldRow::mnemonic)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  @Test
  void aRowIsPublishedExactlyWhereTheMessagesHaveItsTagAndMnemonic() {
    SampleMessages messages = new SampleMessages(PublishedLists.open());
    List<String> wrong = new ArrayList<>();
    for (FieldRow row : rows()) {
      boolean claimed = row.source().known() == Knowledge.PUBLISHED;
      if (claimed != isInMessages(row, messages)) {
        wrong.add(place(row) + " " + row.mnemonic() + ": " + row.source());
      }
    }
    assertEquals(List.of(), wrong);
  }

  private static boolean isInMessages(FieldRow row, SampleMessages messages) {
    Optional<Tagged> field = messages.field(row.number().toString());
    if (row.mnemonic().isEmpty()) {
      return false;
    }
    int type = row.number().recordType();
    if (row.item().isEmpty()) {
      return field.filter(tagged -> tagged.mnemonics.contains(row.mnemonic())).isPresent()
          || isBinary(type) && !messages.elements(type, row.mnemonic()).isEmpty();
    }
    return field.isPresent()
        && (field.get().items.containsKey(row.mnemonic())
            || !messages.elements(type, row.mnemonic()).isEmpty());
  }

  /** Comments in the messages' binary records name no tags. */
  private static boolean isBinary(int type) {
    return TABLES.recordType(type).orElseThrow().encoding() == RecordTypeRow.Encoding.BINARY;
  }

  private static String place(FieldRow row) {
    return row.number() + (row.item().isPresent() ? "/" + row.item().getAsInt() : "");
  }

  @Test
  void whatARowClaimsToBeMatchedAgrees() {
    PublishedLists shared = PublishedLists.open();
    SampleMessages messages = new SampleMessages(shared);
    SchemaTypes schemas = new SchemaTypes(shared);
    CodeLists lists = new CodeLists(shared);
    Map<String, Integer> repetitions = repetitions(shared);
    List<String> wrong = new ArrayList<>();
    for (FieldRow row : rows()) {
      for (Aspect aspect : row.matched().aspects()) {
        boolean agrees =
            row.matched().document().equals("EBTS10T")
                && row.source().known() == Knowledge.PUBLISHED
                && switch (aspect) {
                  case PRESENCE -> presenceAgrees(row, messages);
                  case VALUES -> valuesAgree(row, messages, schemas, lists);
                  case OCCURS -> occursAgree(row, repetitions);
                  case ITEMS, CHARACTERS, LENGTH -> false;
                };
        if (!agrees) {
          wrong.add(place(row) + " " + row.mnemonic() + " " + aspect);
        }
      }
    }
    assertEquals(List.of(), wrong);
  }

  @Test
  void whatMessagesLeaveOutIsNotDemandedAndWhatTheyAlwaysHaveIs() {
    SampleMessages messages = new SampleMessages(PublishedLists.open());
    Differences differences = new Differences("presence");
    for (FieldRow row : rows()) {
      Optional<Tagged> field = messages.field(row.number().toString());
      if (row.item().isEmpty()
          && row.number().recordType() != DESCRIPTIVE_TEXT
          && row.versions().contains(EDITION)
          && field.filter(tagged -> !tagged.mnemonics.isEmpty()).isPresent()
          && isUnconditional(row)
          && !presenceAgrees(row, messages)) {
        String level = field.get().optional ? "optional" : "mandatory";
        differences.add("presence", "layout", row.number().toString(), "messages: " + level);
      }
    }
    differences.assertListed();
  }

  private static boolean isUnconditional(FieldRow row) {
    List<Clause> clauses = row.presence().clauses();
    return clauses.isEmpty() || clauses.size() == 1 && clauses.get(0).condition().isEmpty();
  }

  private static boolean presenceAgrees(FieldRow row, SampleMessages messages) {
    List<Clause> clauses = row.presence().clauses();
    boolean always =
        !clauses.isEmpty()
            && clauses.get(0).demand() == Demand.MANDATORY
            && clauses.get(0).condition().isEmpty();
    boolean never =
        clauses.isEmpty() || clauses.size() == 1 && clauses.get(0).demand() == Demand.OPTIONAL;
    boolean optional = messages.field(row.number().toString()).orElseThrow().optional;
    return row.number().recordType() != DESCRIPTIVE_TEXT
        && row.item().isEmpty()
        && row.versions().contains(EDITION)
        && (optional ? never : always);
  }

  /** The most that any sample allows, by field. */
  private static Map<String, Integer> repetitions(PublishedLists shared) {
    Map<String, Integer> most = new TreeMap<>();
    for (Map<String, String> row : shared.rows("ebts10-fields-by-tot.csv")) {
      if (row.get("item_letter").isEmpty() && row.get("max").matches("[0-9]+")) {
        most.merge(row.get("field"), Integer.parseInt(row.get("max")), Math::max);
      }
    }
    return most;
  }

  private static boolean occursAgree(FieldRow row, Map<String, Integer> repetitions) {
    return row.item().isEmpty()
        && row.maxOccurs().isPresent()
        && row.maxOccurs().getAsInt() == repetitions.getOrDefault(row.number().toString(), -1);
  }

  private static boolean valuesAgree(
      FieldRow row, SampleMessages messages, SchemaTypes schemas, CodeLists lists) {
    Set<String> elements = elements(row, messages);
    return !elements.isEmpty()
        && elements.stream()
            .allMatch(element -> agrees(row.values().orElseThrow(), schemas.of(element), lists));
  }

  private static Set<String> elements(FieldRow row, SampleMessages messages) {
    int type = row.number().recordType();
    Optional<Tagged> field = messages.field(row.number().toString());
    if (row.item().isPresent()) {
      return field.map(f -> f.items.getOrDefault(row.mnemonic(), Set.of())).orElse(Set.of());
    }
    return isBinary(type)
        ? messages.elements(type, row.mnemonic())
        : field.map(f -> f.elements).orElse(Set.of());
  }

  private static boolean agrees(ValueRule rule, Set<String> types, CodeLists lists) {
    List<ValueRule> rules = rule instanceof AnyOf any ? any.rules() : List.of(rule);
    if (types.equals(Set.of("boolean"))) {
      return literals(rules).equals(Set.of("Y", "N"));
    }
    if (types.contains("DateType") || types.contains("YMDDateType")) {
      return rules.get(0) instanceof CalendarDate || rules.get(0) instanceof GreenwichTime;
    }
    if (rules.get(0) instanceof InTable table) {
      return types.stream().anyMatch(type -> isListOf(table.table(), type));
    }
    Set<String> published = new HashSet<>();
    for (String type : types) {
      for (String document : List.of("NIEM6", "NIEMB1", "EBTS10", "FBI2")) {
        published.addAll(lists.find(document + ": " + type).keySet());
      }
    }
    return !published.isEmpty() && literals(rules).equals(published);
  }

  private static Set<String> literals(List<ValueRule> rules) {
    return rules.stream()
        .map(rule -> rule instanceof Literal literal ? literal.text() : rule.inWords())
        .collect(Collectors.toSet());
  }

  private static boolean isListOf(String table, String type) {
    return Differences.resource("code-lists.csv").stream()
        .filter(row -> row.get("table").equals(table))
        .anyMatch(row -> row.get("list").endsWith(": " + type));
  }

  @Test
  void mostTagsOfRecordTypesThatTheMessagesHoldArePublished() {
    Map<Integer, long[]> counts = new LinkedHashMap<>();
    for (FieldRow row : rows()) {
      if (row.item().isEmpty() && row.versions().contains(EDITION)) {
        long[] count = counts.computeIfAbsent(row.number().recordType(), key -> new long[2]);
        count[0]++;
        count[1] += row.source().known() == Knowledge.PUBLISHED ? 1 : 0;
      }
    }
    long all = 0;
    long published = 0;
    for (int type : List.of(1, 2, 4, 9, 10, 13, 14, 15, 17)) {
      all += counts.get(type)[0];
      published += counts.get(type)[1];
    }
    System.out.println(
        "tags published in the record types of the messages: " + published + " of " + all);
    assertTrue(published >= 0.7 * all, published + " of " + all);
  }
}
