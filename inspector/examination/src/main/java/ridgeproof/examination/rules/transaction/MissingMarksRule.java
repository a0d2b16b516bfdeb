package ridgeproof.examination.rules.transaction;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.facts.MissingFingers;
import ridgeproof.examination.rules.Rule;
import ridgeproof.examination.rules.descriptive.DescriptiveText;
import ridgeproof.examination.submission.PrintSet;
import ridgeproof.finding.FindingLog;
import ridgeproof.finding.Location;
import ridgeproof.finding.Observed;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.submission.MissingMark;
import ridgeproof.spec.submission.MissingMark.Extent;
import ridgeproof.transaction.record.Field;
import ridgeproof.transaction.record.LogicalRecord;
import ridgeproof.transaction.record.Subfield;

/** What field 2.026 tells of missing fingers agrees with the prints and their annotations. */
final class MissingMarksRule implements Rule {

  private static final String NOT_ANNOTATED = "RP-TXN-052";
  private static final String NO_MARK = "RP-TXN-053";
  private static final FieldNumber MARKS = new FieldNumber(2, 26);
  private static final String AMPUTATED = "XX";

  private record Told(MissingMark mark, Location place) {}

  @Override
  public Set<String> ids() {
    return Set.of(NOT_ANNOTATED, NO_MARK);
  }

  @Override
  public void check(ExaminationInput examinee, FindingLog log) {
    List<LogicalRecord> records =
        examinee.transaction().recordsOfType(DescriptiveText.TYPE).stream()
            .filter(record -> record.field(MARKS).isPresent())
            .toList();
    if (records.isEmpty()) {
      return;
    }
    List<Told> told = told(examinee, records);
    PrintSet set = new PrintSet(examinee.transaction(), examinee.images(), examinee.tables());
    told.forEach(mark -> checkPrints(mark, set, log));
    checkAnnotations(examinee, records.get(0), told, log);
  }

  private static List<Told> told(ExaminationInput examinee, List<LogicalRecord> records) {
    List<Told> told = new ArrayList<>();
    for (LogicalRecord record : records) {
      Field field = record.field(MARKS).orElseThrow();
      for (int i = 1; i <= field.subfields().size(); i++) {
        Subfield subfield = field.subfields().get(i - 1);
        Location place = Location.of(record, field).subfield(i, subfield.range());
        examinee.tables().submissions().missingMarks().stream()
            .filter(mark -> mark.mark().equalsIgnoreCase(subfield.text(1).strip()))
            .forEach(mark -> told.add(new Told(mark, place)));
      }
    }
    return told;
  }

  /** A finger that is neither printed nor annotated is reported where completeness is checked. */
  private static void checkPrints(Told told, PrintSet set, FindingLog log) {
    MissingMark mark = told.mark();
    Set<Integer> printed = new TreeSet<>(mark.fingers());
    printed.removeIf(finger -> set.isDeclared(finger) || !set.shows(finger));
    boolean contradicts =
        switch (mark.extent()) {
          case ALL -> !printed.isEmpty();
          case SOME -> printed.size() == mark.fingers().size();
          case PART -> false;
        };
    if (contradicts) {
      log.add(
          NOT_ANNOTATED,
          told.place(),
          Observed.personal(mark.mark()),
          mark.extent() == Extent.ALL
              ? "no prints of the missing hand"
              : "an annotation of the missing finger",
          Optional.of(mark.source()),
          List.of());
    }
  }

  /** Marks are optional; only where some are listed is a missing one a gap. */
  private static void checkAnnotations(
      ExaminationInput examinee, LogicalRecord record, List<Told> told, FindingLog log) {
    MissingFingers missing = new MissingFingers(examinee);
    for (int finger : missing.fingers()) {
      boolean amputated = missing.of(finger).orElseThrow().reason().equalsIgnoreCase(AMPUTATED);
      boolean marked = told.stream().anyMatch(mark -> mark.mark().fingers().contains(finger));
      if (amputated && !marked) {
        log.add(
            NO_MARK,
            Location.of(record, record.field(MARKS).orElseThrow()),
            Observed.of(String.format(Locale.ROOT, "finger %d annotated %s", finger, AMPUTATED)),
            "a mark for the missing finger");
        return;
      }
    }
  }
}
