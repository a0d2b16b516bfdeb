package ridgeproof.examination;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.TestFactory;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.examination.rules.layout.Offence;
import ridgeproof.finding.Finding;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.RecordTypeRow;
import ridgeproof.spec.requirement.Requirement;
import ridgeproof.spec.requirement.Requirements;
import ridgeproof.transaction.reader.ParseLimits;
import ridgeproof.transaction.record.ByteSource;

/**
 * Walks every requirement of every layout: a record in which it binds and is kept brings no finding
 * of the layouts, and the same record with this one requirement broken brings its rule there.
 */
@Tag("slow")
class RequirementWalkTest {

  private static final SpecTables TABLES = SpecTables.open();
  private static final Requirements REQUIREMENTS = new Requirements(TABLES);
  private static final SketchBuilder BUILDER = new SketchBuilder(TABLES);
  private static final ClauseSolver SOLVER = new ClauseSolver(TABLES, BUILDER);
  private static final Offence OFFENCE = new Offence(TABLES, BUILDER);
  private static final SketchWriter WRITER = new SketchWriter(TABLES);
  private static final Examiner EXAMINER = new Examiner(TABLES, ParseLimits.standard());
  private static final ExaminationOptions STRUCTURE =
      ExaminationOptions.standard().withDepth(Depth.STRUCTURE);
  private static final int CONTENTS = 3;
  private static final int IDC = 2;
  private static final Map<Integer, Integer> CHECKED = new TreeMap<>();

  /** A finding by what tells it from another one. */
  private record Told(String rule, String place) {}

  @TestFactory
  List<DynamicTest> everyRequirementIsReportedWhereItIsBrokenAndOnlyThere() {
    return TABLES.recordTypes().stream()
        .map(type -> DynamicTest.dynamicTest("Type-" + type.type(), () -> walk(type)))
        .toList();
  }

  private static void walk(RecordTypeRow type) {
    List<String> failures = new ArrayList<>();
    int checked = 0;
    for (Requirement requirement : REQUIREMENTS.of(type)) {
      if (requirement.isObservable()) {
        try {
          check(requirement);
          checked++;
        } catch (AssertionError e) {
          failures.add(requirement.id() + ": " + e.getMessage());
        }
      }
    }
    assertEquals("", String.join("\n", failures));
    CHECKED.put(type.type(), checked);
  }

  private static void check(Requirement requirement) {
    Sketch kept = SOLVER.solve(requirement);
    if (requirement.recordType() == 1 && kept.has(CONTENTS)) {
      kept = kept.with(CONTENTS, contents(2));
    }
    Sketch broken = OFFENCE.against(requirement, kept);
    int field = requirement.row().number().field();
    Map<Integer, List<List<String>>> demanded = new TreeMap<>(broken.fields());
    demanded.remove(field);
    List<Told> before = examine(WRITER.write(transaction(kept.and(demanded))), requirement);
    assertEquals(
        List.of(),
        before.stream().filter(t -> t.rule().matches("RP-(STR|FLD|COD)-.*")).toList(),
        "the conforming record is objected to");
    List<Told> after = new ArrayList<>(examine(offending(requirement, broken), requirement));
    // What was told of the value before is told of each repetition of it, and is no news.
    after.removeAll(before);
    Told expected = new Told(Companions.reporter(requirement), place(requirement));
    assertTrue(after.remove(expected), "expected " + expected + ", told " + after);
    after.remove(expected);
    assertEquals(
        List.of(),
        after.stream()
            .filter(told -> !Companions.admit(requirement, told.rule(), told.place(), TABLES))
            .toList(),
        "something else is told");
  }

  /** The contents of a transaction with one record after the first. */
  private static List<List<String>> contents(int type) {
    return List.of(List.of("1", "1"), List.of(Integer.toString(type), "01"));
  }

  private static List<Sketch> transaction(Sketch sketch) {
    return sketch.type() == 1
        ? List.of(sketch, BUILDER.smallest(2, sketch.version()))
        : List.of(BUILDER.smallest(1, sketch.version()), sketch);
  }

  private static byte[] offending(Requirement requirement, Sketch broken) {
    byte[] bytes = WRITER.write(transaction(broken));
    int field = requirement.row().number().field();
    if (broken.type() == 1 && field == CONTENTS) {
      return SketchWriter.withContents(bytes, Optional.ofNullable(broken.fields().get(field)));
    }
    if (broken.type() != 1 && field == IDC) {
      return SketchWriter.withContents(bytes, Optional.of(contents(broken.type())));
    }
    return field == 1 ? SketchWriter.withLength(bytes, broken) : bytes;
  }

  private static List<Told> examine(byte[] bytes, Requirement requirement) {
    return EXAMINER.examine(ByteSource.of(bytes), STRUCTURE).everyFinding().stream()
        .map(finding -> told(finding, requirement))
        .toList();
  }

  private static Told told(Finding finding, Requirement requirement) {
    String field = finding.location().field().map(Object::toString).orElse("");
    String item =
        finding.location().item().isPresent()
            ? "." + finding.location().item().getAsInt()
            : finding.observed().text().startsWith("item ")
                ? "." + finding.observed().text().split(" ")[1]
                : "";
    boolean whole = requirement.row().item().isEmpty();
    return new Told(finding.ruleId(), field + (whole ? "" : item));
  }

  private static String place(Requirement requirement) {
    return requirement.row().number()
        + (requirement.row().item().isPresent() ? "." + requirement.row().item().getAsInt() : "");
  }

  @AfterAll
  static void theWalkChecksEveryRequirementThatIsCounted() {
    List<Requirement> all = REQUIREMENTS.all();
    long counted = all.stream().filter(Requirement::isObservable).count();
    int checked = CHECKED.values().stream().mapToInt(Integer::intValue).sum();
    Map<String, Integer> shadowed = new LinkedHashMap<>();
    for (Requirement requirement : all) {
      requirement
          .shadow()
          .ifPresent(
              why -> shadowed.merge(requirement.kind().label() + ", " + why, 1, Integer::sum));
    }
    System.out.println("Requirements checked: " + checked + ", by record type " + CHECKED);
    System.out.println("Not requirements, for nothing can break them alone: " + shadowed);
    assertEquals(counted, checked);
    assertTrue(checked >= 1200, "only " + checked);
  }
}
