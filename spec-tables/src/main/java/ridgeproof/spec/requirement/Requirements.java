package ridgeproof.spec.requirement;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.CharacterType;
import ridgeproof.spec.layout.Code;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.layout.FieldRow;
import ridgeproof.spec.layout.Presence.Clause;
import ridgeproof.spec.layout.Presence.Demand;
import ridgeproof.spec.layout.RecordLayout;
import ridgeproof.spec.layout.RecordTypeRow;
import ridgeproof.spec.layout.RecordTypeRow.Encoding;

/** Every single requirement that the layouts state. */
public final class Requirements {

  private static final int USER_DEFINED_TYPE = 2;

  private final SpecTables tables;
  private final ViolatingValues departing;
  private final List<Integer> versions;

  public Requirements(SpecTables tables) {
    this.tables = tables;
    this.departing = new ViolatingValues(tables);
    this.versions =
        tables.codes("versions").codes().stream()
            .map(Code::code)
            .map(Integer::parseInt)
            .sorted(Comparator.reverseOrder())
            .toList();
  }

  /** The requirements of every record type, in the order of the tables. */
  public List<Requirement> all() {
    return tables.recordTypes().stream().flatMap(type -> of(type).stream()).toList();
  }

  /** The requirements of one record type, those included that no transaction can break. */
  public List<Requirement> of(RecordTypeRow type) {
    return new Listing(type).requirements();
  }

  /** The requirements of one record type in the making. */
  private final class Listing {

    private final RecordTypeRow type;
    private final RecordLayout layout;
    private final boolean binary;
    private final Map<String, Integer> rowsOfPlace = new HashMap<>();
    private final Set<FieldNumber> editionsListed = new HashSet<>();
    private final Set<String> ids = new HashSet<>();
    private final List<Requirement> requirements = new ArrayList<>();

    Listing(RecordTypeRow type) {
      this.type = type;
      this.layout = tables.layout(type.type());
      this.binary = type.encoding() == Encoding.BINARY;
      layout.rows().forEach(row -> rowsOfPlace.merge(place(row), 1, Integer::sum));
    }

    List<Requirement> requirements() {
      for (FieldRow row : layout.rows()) {
        if (!row.isRange()) {
          new OfRow(row).list();
        }
      }
      return List.copyOf(requirements);
    }

    private List<Integer> known() {
      return versions.stream().filter(type.versions()::contains).toList();
    }

    /** The requirements of one row. */
    private final class OfRow {

      private final FieldRow row;
      private final FieldRow field;
      private final List<FieldRow> items;
      private final List<Integer> holds;
      private final boolean data;

      OfRow(FieldRow row) {
        this.row = row;
        this.holds =
            known().stream()
                .filter(row.versions()::contains)
                .filter(version -> layout.field(row.number(), version).isPresent())
                .toList();
        this.field =
            row.item().isEmpty() || holds.isEmpty()
                ? row
                : layout.field(row.number(), holds.get(0)).orElseThrow();
        this.items = holds.isEmpty() ? List.of() : layout.items(row.number(), holds.get(0));
        this.data = type.imageField().filter(row.number()::equals).isPresent();
      }

      void list() {
        listClauses();
        if (data) {
          return;
        }
        if (row.item().isEmpty()) {
          listField();
        }
        if (row.item().isPresent() || items.isEmpty()) {
          listValue();
        }
      }

      private void listClauses() {
        List<Clause> clauses = row.presence().clauses();
        for (int i = 0; i < clauses.size(); i++) {
          if (clauses.get(i).demand() != Demand.OPTIONAL) {
            addClause(RequirementKind.of(clauses.get(i).demand()), i);
          }
        }
        if (row.item().isEmpty()) {
          optionalClause().ifPresent(i -> addClause(RequirementKind.NOT_EMPTY, i));
        }
      }

      /** The clause by which the field may be left out, or the end of the list. */
      private OptionalInt optionalClause() {
        List<Clause> clauses = row.presence().clauses();
        for (int i = 0; i < clauses.size(); i++) {
          if (clauses.get(i).demand() == Demand.OPTIONAL) {
            return OptionalInt.of(i);
          }
          if (clauses.get(i).condition().isEmpty()) {
            return OptionalInt.empty();
          }
        }
        return OptionalInt.of(clauses.size());
      }

      private void addClause(RequirementKind kind, int clause) {
        add(kind, OptionalInt.of(clause), holds, presenceShadow(kind));
      }

      private Optional<String> presenceShadow(RequirementKind kind) {
        if (binary && row.bytes().isPresent()) {
          return Optional.of("is at a fixed place in the record");
        }
        if (binary && kind == RequirementKind.NOT_EMPTY) {
          return Optional.of("binary data without bytes is not a field");
        }
        boolean alone = items.size() == 1 && field.maxOccurs().orElse(2) == 1;
        return kind == RequirementKind.MANDATORY && row.item().isPresent() && alone
            ? Optional.of("the only item: without it the whole field is empty")
            : Optional.empty();
      }

      private void listField() {
        listEditions();
        Optional<String> fixed =
            binary ? Optional.of("is at a fixed place in the record") : Optional.empty();
        if (row.minOccurs() > 1) {
          add(RequirementKind.MIN_OCCURS, fixed);
        }
        if (row.maxOccurs().isPresent()) {
          add(RequirementKind.MAX_OCCURS, fixed);
        }
        if (!binary && (!items.isEmpty() || row.characters() != CharacterType.ANY)) {
          add(RequirementKind.ITEMS, Optional.empty());
        }
      }

      private void listEditions() {
        List<Integer> without =
            known().stream()
                .filter(version -> layout.field(row.number(), version).isEmpty())
                .toList();
        if (!binary
            && !without.isEmpty()
            && type.type() != USER_DEFINED_TYPE
            && editionsListed.add(row.number())) {
          String id = row.number() + "/" + RequirementKind.EDITION.label();
          add(id, RequirementKind.EDITION, OptionalInt.empty(), without, Optional.empty());
        }
      }

      private void listValue() {
        if (row.characters() != CharacterType.ANY && row.characters() != CharacterType.B) {
          add(RequirementKind.CHARACTERS, Optional.empty());
        }
        if (row.minLength().isPresent()) {
          add(
              RequirementKind.MIN_LENGTH,
              departing.tooShort(row).isPresent()
                  ? Optional.empty()
                  : Optional.of("a value without characters is not a value"));
        }
        if (row.maxLength().isPresent()) {
          add(RequirementKind.MAX_LENGTH, Optional.empty());
        }
        if (row.values().isPresent()) {
          add(RequirementKind.VALUES, valueShadow());
        }
      }

      private Optional<String> valueShadow() {
        if (binary && row.presence().clauses().get(0).demand() == Demand.OPTIONAL) {
          return Optional.of("read only where every number of the header makes sense");
        }
        int version = holds.isEmpty() ? versions.get(0) : holds.get(0);
        boolean breakable =
            binary
                ? departing.refusedNumber(row, version).isPresent()
                : departing.refused(row, version).isPresent();
        return breakable
            ? Optional.empty()
            : Optional.of("characters and length allow no other value");
      }

      private void add(RequirementKind kind, Optional<String> shadow) {
        add(kind, OptionalInt.empty(), holds, shadow);
      }

      private void add(
          RequirementKind kind, OptionalInt clause, List<Integer> valid, Optional<String> shadow) {
        String id = place(row) + edition() + "/" + kind.label();
        add(id, kind, clause, valid, shadow);
      }

      private void add(
          String id,
          RequirementKind kind,
          OptionalInt clause,
          List<Integer> valid,
          Optional<String> shadow) {
        String own = id;
        for (int i = 2; !ids.add(own); i++) {
          own = id + "-" + i;
        }
        requirements.add(
            new Requirement(own, kind, field, row, clause, valid, kind.rule(row), shadow));
      }

      private String edition() {
        if (rowsOfPlace.get(place(row)) == 1) {
          return "";
        }
        return row.versions().since() > 0
            ? String.format(Locale.ROOT, "@%04d", row.versions().since())
            : String.format(Locale.ROOT, "@to%04d", row.versions().until());
      }
    }
  }

  private static String place(FieldRow row) {
    return row.number() + (row.item().isPresent() ? "." + row.item().getAsInt() : "");
  }
}
