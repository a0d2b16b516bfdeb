package ridgeproof.examination.cause;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import ridgeproof.finding.Finding;
import ridgeproof.finding.Location;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.rule.Severity;

/** One fault in many subfields, or in many records of one type, is one finding. */
public final class Repetitions {

  /** What makes a finding the same fault at another place. */
  private record Fault(
      String rule,
      Severity severity,
      OptionalInt recordType,
      Optional<FieldNumber> field,
      OptionalInt item,
      String required,
      String explanation,
      String remedy,
      List<Object> own) {

    /** A finding that names a print stays by itself: it is what someone has to do about it. */
    static Fault of(Finding finding, int index) {
      Location place = finding.location();
      boolean alone =
          place.field().isEmpty()
              || place.position().isPresent()
              || finding.explains().isPresent()
              || !finding.evidence().isEmpty();
      return new Fault(
          finding.ruleId(),
          finding.severity(),
          place.recordType(),
          place.field(),
          place.item(),
          finding.required(),
          finding.explanation(),
          finding.remedy(),
          alone ? List.of(index) : List.of());
    }
  }

  private Repetitions() {}

  /** Each fault once, where it is first, with its further places. */
  public static List<Finding> gathered(List<Finding> findings) {
    Map<Fault, List<Finding>> faults = new LinkedHashMap<>();
    IntStream.range(0, findings.size())
        .forEach(
            i ->
                faults
                    .computeIfAbsent(Fault.of(findings.get(i), i), key -> new ArrayList<>())
                    .add(findings.get(i)));
    return faults.values().stream().map(Repetitions::one).toList();
  }

  private static Finding one(List<Finding> places) {
    return places.size() == 1
        ? places.get(0)
        : places.get(0).repeatedAt(places.subList(1, places.size()));
  }
}
