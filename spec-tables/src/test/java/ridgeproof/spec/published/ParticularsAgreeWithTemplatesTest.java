package ridgeproof.spec.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.descriptive.ParticularRow;
import ridgeproof.spec.layout.Presence.Clause;
import ridgeproof.spec.layout.Presence.Demand;
import ridgeproof.spec.table.Source;
import ridgeproof.spec.table.Source.Knowledge;

/** The Type-2 fields of every type of transaction that has a published sample, both ways. */
class ParticularsAgreeWithTemplatesTest {

  private static final SpecTables TABLES = SpecTables.open();
  private static final String SAMPLES = "EBTS10T";

  /** A field as a sample has it. */
  private record Sampled(boolean mandatory, OptionalInt most) {}

  /** The fields of each type of transaction; a field seen only by its items is optional. */
  private static Map<String, Map<String, Sampled>> samples(PublishedLists shared) {
    Map<String, Map<String, Sampled>> samples = new TreeMap<>();
    for (Map<String, String> row : shared.rows("ebts10-fields-by-tot.csv")) {
      String field = row.get("field");
      if (field.equals("2.001") || field.equals("2.002")) {
        continue; // the frame of every record
      }
      Map<String, Sampled> fields =
          samples.computeIfAbsent(row.get("tot"), key -> new LinkedHashMap<>());
      if (row.get("item_letter").isEmpty()) {
        boolean mandatory = row.get("level_read_from_template").equals("M");
        fields.put(field, new Sampled(mandatory, number(row.get("max"))));
      } else {
        fields.putIfAbsent(field, new Sampled(false, OptionalInt.empty()));
      }
    }
    return samples;
  }

  private static OptionalInt number(String cell) {
    return cell.chars().allMatch(Character::isDigit) && !cell.isEmpty()
        ? OptionalInt.of(Integer.parseInt(cell))
        : OptionalInt.empty();
  }

  private static String level(ParticularRow row) {
    List<Clause> clauses = row.presence().clauses();
    if (clauses.isEmpty() || clauses.get(0).demand() == Demand.OPTIONAL) {
      return "optional";
    }
    return clauses.get(0).condition().isEmpty() ? "mandatory" : "conditional";
  }

  @Test
  void eachTypeHasTheFieldsOfItsSampleAtItsLevel() {
    Differences differences =
        new Differences("missing field", "extra field", "level of field", "repetitions");
    samples(PublishedLists.open()).forEach((type, fields) -> compare(type, fields, differences));
    differences.assertListed();
  }

  private static void compare(String type, Map<String, Sampled> fields, Differences differences) {
    Map<String, ParticularRow> own = new LinkedHashMap<>();
    TABLES.particulars().ofTransaction(type).forEach(row -> own.put(row.field().toString(), row));
    fields.forEach(
        (field, sampled) -> {
          ParticularRow row = own.get(field);
          if (row == null) {
            differences.add("missing field", type, field, sampled.toString());
            return;
          }
          String level = sampled.mandatory() ? "mandatory" : "optional";
          if (!level(row).equals(level)) {
            differences.add("level of field", type, field, level(row) + ", sample: " + level);
          }
          if (!row.most().equals(sampled.most())) {
            differences.add("repetitions", type, field, row.most() + ", " + sampled.most());
          }
        });
    own.keySet().stream()
        .filter(field -> !fields.containsKey(field))
        .forEach(field -> differences.add("extra field", type, field, level(own.get(field))));
  }

  @Test
  void aFieldIsPublishedOnlyWhereItsSampleAgrees() {
    Map<String, Map<String, Sampled>> samples = samples(PublishedLists.open());
    List<String> wrong = new ArrayList<>();
    for (Map.Entry<String, Source> type : TABLES.particulars().transactions().entrySet()) {
      Map<String, Sampled> fields = samples.getOrDefault(type.getKey(), Map.of());
      for (ParticularRow row : TABLES.particulars().ofTransaction(type.getKey())) {
        boolean cites =
            row.source().document().equals(SAMPLES)
                && row.source().place().equals(type.getKey())
                && fields.containsKey(row.field().toString());
        if (row.source().known() == Knowledge.PUBLISHED && !cites) {
          wrong.add(type.getKey() + " " + row.field() + ": " + row.source());
        }
      }
    }
    assertEquals(List.of(), wrong);
  }

  @Test
  void nineteenInTwentyFieldsOfTypesWithASampleArePublished() {
    long all = 0;
    long published = 0;
    for (Map.Entry<String, Source> type : TABLES.particulars().transactions().entrySet()) {
      if (type.getValue().document().equals(SAMPLES)) {
        for (ParticularRow row : TABLES.particulars().ofTransaction(type.getKey())) {
          all++;
          published += row.source().known() == Knowledge.PUBLISHED ? 1 : 0;
        }
      }
    }
    assertTrue(published >= 0.95 * all, published + " of " + all);
  }
}
