package ridgeproof.examination.rules.layout;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.finding.FindingLog;
import ridgeproof.finding.Location;
import ridgeproof.finding.Observed;
import ridgeproof.finding.Quantity;
import ridgeproof.spec.layout.CharacterType;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.layout.FieldRow;
import ridgeproof.spec.layout.ValueRule;
import ridgeproof.spec.requirement.RequirementKind;
import ridgeproof.spec.table.Source;
import ridgeproof.transaction.record.Field;
import ridgeproof.transaction.record.Item;
import ridgeproof.transaction.record.LogicalRecord;
import ridgeproof.transaction.record.Subfield;

/** Repetitions, items and values of one field that is there. */
final class FieldCheck {

  private static final String OTHER_EDITION = "RP-COD-002";
  private static final String DISPUTED_CODE = "RP-COD-003";

  static final Set<String> IDS =
      Set.of(
          "RP-FLD-002",
          "RP-FLD-003",
          "RP-FLD-004",
          "RP-FLD-005",
          "RP-FLD-006",
          "RP-FLD-007",
          "RP-FLD-008",
          "RP-FLD-012",
          "RP-FLD-009",
          "RP-FLD-010",
          "RP-COD-001",
          OTHER_EDITION,
          DISPUTED_CODE);

  private static final FieldNumber VERSION = new FieldNumber(1, 2);
  private static final String UNKNOWN_VERSION = "RP-STR-023";

  private final ExaminationInput examinee;
  private final LogicalRecord record;
  private final Field field;
  private final FieldRow row;
  private final List<FieldRow> items;
  private final RecordValues values;
  private final FindingLog log;

  FieldCheck(
      ExaminationInput examinee,
      LogicalRecord record,
      Field field,
      FieldRow row,
      List<FieldRow> items,
      RecordValues values,
      FindingLog log) {
    this.examinee = examinee;
    this.record = record;
    this.field = field;
    this.row = row;
    this.items = items;
    this.values = values;
    this.log = log;
  }

  void run() {
    if (field.isData() || isUnknownVersion()) {
      return;
    }
    checkRepetitions();
    for (int i = 1; i <= field.subfields().size(); i++) {
      Subfield subfield = field.subfields().get(i - 1);
      if (items.isEmpty()) {
        if (row.characters() != CharacterType.ANY) {
          checkSurplus(subfield, i, 1);
        }
        checkValue(row, subfield.items().get(0), i, 1);
      } else {
        checkItems(subfield, i);
      }
    }
  }

  /** The reader has said so, and why it is wrong of form adds nothing. */
  private boolean isUnknownVersion() {
    return field.number().equals(VERSION)
        && examinee.transaction().findings().stream()
            .anyMatch(finding -> finding.ruleId().equals(UNKNOWN_VERSION));
  }

  private void checkRepetitions() {
    int count = field.subfields().size();
    if (count < row.minOccurs()) {
      report(
          RequirementKind.MIN_OCCURS,
          place(),
          Observed.of(Quantity.of(count, "subfield")),
          "at least " + Quantity.of(row.minOccurs(), "subfield"),
          row);
    }
    if (row.maxOccurs().isPresent() && count > row.maxOccurs().getAsInt()) {
      report(
          RequirementKind.MAX_OCCURS,
          place(),
          Observed.of(Quantity.of(count, "subfield")),
          "at most " + Quantity.of(row.maxOccurs().getAsInt(), "subfield"),
          row);
    }
  }

  private void checkItems(Subfield subfield, int repetition) {
    RecordValues inner = values.within(subfield);
    ItemPlan plan = ItemPlan.of(items);
    for (ItemPlan.Place place : plan.places(subfield.items().size())) {
      boolean inRound = place.round() == 1 || plan.says(subfield, place.round());
      if (inRound) {
        checkItem(place.row(), place.number(), subfield, repetition, inner);
      }
    }
    checkSurplus(subfield, repetition, plan.most());
  }

  private void checkItem(
      FieldRow item, int number, Subfield subfield, int repetition, RecordValues inner) {
    String text = subfield.text(number);
    Location place = place().subfield(repetition, subfield.range());
    String name = "item " + number + " (" + item.name() + ")";
    RequirementKind kind = RequirementKind.of(item.presence().demandFor(inner));
    if (text.isEmpty()) {
      if (kind == RequirementKind.MANDATORY) {
        report(kind, place, Observed.of(name + " empty"), "a value", item);
      }
      return;
    }
    if (kind == RequirementKind.FORBIDDEN) {
      report(kind, place, Observed.of(name + " present"), "item omitted", item);
    } else if (kind == RequirementKind.DEPRECATED) {
      report(kind, place, Observed.of(name + " present"), "item omitted", item);
    }
    checkValue(item, subfield.items().get(number - 1), repetition, number);
  }

  /** More items than the layout has; trailing empty ones are let pass. */
  private void checkSurplus(Subfield subfield, int repetition, int most) {
    for (int number = most + 1; number <= subfield.items().size(); number++) {
      if (!subfield.text(number).isEmpty()) {
        report(
            RequirementKind.ITEMS,
            place().subfield(repetition, subfield.range()),
            Observed.of(subfield.items().size() + " items"),
            most == 1 ? "one item" : "at most " + most + " items",
            row);
        return;
      }
    }
  }

  private void checkValue(FieldRow rule, Item item, int repetition, int number) {
    String text = item.text();
    if (text.isEmpty()) {
      return;
    }
    Location place = place().item(repetition, number, item);
    int length = text.codePointCount(0, text.length());
    if (!rule.characters().allows(text)) {
      report(
          RequirementKind.CHARACTERS, place, shown(rule, text), rule.characters().inWords(), rule);
    } else if (rule.minLength().isPresent() && length < rule.minLength().getAsInt()) {
      report(RequirementKind.MIN_LENGTH, place, shown(rule, text), lengths(rule), rule);
    } else if (rule.maxLength().isPresent() && length > rule.maxLength().getAsInt()) {
      report(RequirementKind.MAX_LENGTH, place, shown(rule, text), lengths(rule), rule);
    } else if (rule.values().filter(allowed -> !allowed.matches(text, this::knows)).isPresent()) {
      reportValue(rule, rule.values().get(), text, place);
    } else if (rule.values().filter(ValueRule::namesCodes).isPresent()) {
      reportDisputed(rule, text, place);
    }
  }

  /** A code of which the sources disagree is not held for, and not let pass in silence. */
  private void reportDisputed(FieldRow rule, String text, Location place) {
    if (tables(rule.values().get()).anyMatch(table -> isDisputed(table, text))) {
      log.add(
          DISPUTED_CODE,
          place,
          shown(rule, text),
          rule.values().get().inWords() + " in every published list",
          Optional.of(RequirementKind.VALUES.source(rule)),
          List.of());
    }
  }

  private static Stream<String> tables(ValueRule rule) {
    if (rule instanceof ValueRule.AnyOf any) {
      return any.rules().stream().flatMap(FieldCheck::tables);
    }
    return rule instanceof ValueRule.InTable inTable ? Stream.of(inTable.table()) : Stream.empty();
  }

  private boolean isDisputed(String table, String code) {
    return examinee
        .tables()
        .codes(table)
        .find(code, examinee.transaction().version())
        .filter(found -> found.source().known() == Source.Knowledge.DISPUTED)
        .isPresent();
  }

  /** A code that only another edition has is used out of its time, and is no invention. */
  private void reportValue(FieldRow rule, ValueRule allowed, String text, Location place) {
    if (allowed.matches(text, this::knewEver)) {
      log.add(
          OTHER_EDITION,
          place,
          shown(rule, text),
          allowed.inWords()
              + String.format(Locale.ROOT, " in version %04d", examinee.transaction().version()),
          Optional.of(RequirementKind.VALUES.source(rule)),
          List.of());
    } else {
      report(RequirementKind.VALUES, place, shown(rule, text), allowed.inWords(), rule);
    }
  }

  private boolean knewEver(String table, String code) {
    return examinee.tables().codes(table).find(code).isPresent();
  }

  private boolean knows(String table, String code) {
    return examinee.tables().codes(table).find(code, examinee.transaction().version()).isPresent();
  }

  private Observed shown(FieldRow rule, String text) {
    return rule.isPublic()
        ? Observed.of("\"" + rule.shown(text) + "\"")
        : Observed.personal("\"" + text + "\"");
  }

  private static String lengths(FieldRow rule) {
    OptionalInt least = rule.minLength();
    OptionalInt most = rule.maxLength();
    if (least.equals(most)) {
      return characters(least);
    }
    if (most.isEmpty()) {
      return "at least " + characters(least);
    }
    return least.isEmpty()
        ? "at most " + characters(most)
        : least.getAsInt() + " to " + characters(most);
  }

  private static String characters(OptionalInt count) {
    return Quantity.of(count.getAsInt(), "character");
  }

  private Location place() {
    return Location.of(record, field);
  }

  private void report(
      RequirementKind kind, Location place, Observed observed, String required, FieldRow origin) {
    log.add(
        kind.rule(origin), place, observed, required, Optional.of(kind.source(origin)), List.of());
  }
}
