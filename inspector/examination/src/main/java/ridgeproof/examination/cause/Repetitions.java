package ridgeproof.examination.cause;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import ridgeproof.finding.Finding;
import ridgeproof.finding.Location;

/** One fault in many subfields, or in many records of one type, is one finding. */
public final class Repetitions {

  private Repetitions() {}

  /** Each fault once, where it is first, with its further places. */
  public static List<Finding> gathered(List<Finding> findings) {
    Map<List<Object>, List<Finding>> faults = new LinkedHashMap<>();
    IntStream.range(0, findings.size())
        .forEach(
            i ->
                faults
                    .computeIfAbsent(fault(findings.get(i), i), key -> new ArrayList<>())
                    .add(findings.get(i)));
    return faults.values().stream().map(Repetitions::one).toList();
  }

  private static Finding one(List<Finding> places) {
    return places.size() == 1
        ? places.get(0)
        : places.get(0).repeatedAt(places.subList(1, places.size()));
  }

  /**
   * What makes a finding the same fault at another place. A finding that names a print stays by
   * itself: it is what someone has to do about it.
   */
  private static List<Object> fault(Finding finding, int index) {
    Location place = finding.location();
    boolean alone =
        place.field().isEmpty()
            || place.position().isPresent()
            || finding.explains().isPresent()
            || !finding.evidence().isEmpty();
    return List.of(
        finding.ruleId(),
        finding.severity(),
        place.recordType(),
        place.field(),
        place.item(),
        finding.required(),
        finding.explanation(),
        finding.remedy(),
        alone ? index : "repeated");
  }
}
