package ridgeproof.examination.safecopy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import ridgeproof.examination.FindingsReport;
import ridgeproof.finding.Finding;
import ridgeproof.finding.Location;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.rule.Severity;

/** A finding that one of a file and its safe copy shows and the other does not. */
public record FindingChange(Finding finding, Reason reason) {

  /** What it comes from. */
  public enum Reason {
    IMAGE_REPLACED("the image was replaced"),
    RIDGES_REPLACED("the ridges were replaced with the image"),
    FINGERS_REPLACED("the fingers were replaced with the images"),
    FEATURES_REPLACED("the features were replaced"),
    VALUE_REPLACED("the value was replaced"),
    CONTENT_REPLACED("a value that it depends on was replaced");

    private final String words;

    Reason(String words) {
      this.words = words;
    }

    public String inWords() {
      return words;
    }
  }

  private static final int FEATURES = 9;
  private static final Comparator<Finding> BY_SEVERITY = Comparator.comparing(Finding::severity);

  /** What the rules that look at pixels have lost, by how their ids begin. */
  private static final Map<String, Reason> OF_IMAGES =
      Map.of(
          "RP-IMG-", Reason.IMAGE_REPLACED,
          "RP-RDG-", Reason.RIDGES_REPLACED,
          "RP-SEQ-", Reason.FINGERS_REPLACED,
          // A blank image of a finger that is annotated as missing contradicts nothing.
          "RP-TXN-005", Reason.IMAGE_REPLACED);

  /** The same finding at the same place, whatever was observed there and at whatever byte. */
  private record Key(
      String rule,
      OptionalInt record,
      Optional<FieldNumber> field,
      OptionalInt subfield,
      OptionalInt item,
      OptionalInt position) {

    static Key of(Finding finding) {
      Location place = finding.location();
      // Features are dealt out anew, so that the same one stands in another subfield.
      boolean feature = place.recordType().orElse(0) == FEATURES;
      return new Key(
          finding.ruleId(),
          place.record(),
          place.field(),
          feature ? OptionalInt.empty() : place.subfield(),
          feature ? OptionalInt.empty() : place.item(),
          place.position());
    }
  }

  /** The findings of the one that the other has no like of. */
  static List<FindingChange> missing(FindingsReport from, FindingsReport in) {
    Map<Key, Integer> there = new HashMap<>();
    in.everyFinding().forEach(finding -> there.merge(Key.of(finding), 1, Integer::sum));
    List<FindingChange> missing = new ArrayList<>();
    for (Finding finding : from.unexplained()) {
      if (there.merge(Key.of(finding), -1, Integer::sum) < 0) {
        missing.add(new FindingChange(finding, reason(finding)));
      }
    }
    return missing;
  }

  /** Whether the first thing that one has to do about a file is the same for the other. */
  static boolean isFirstOf(FindingsReport one, FindingsReport other) {
    return first(one).equals(first(other));
  }

  private static Optional<Key> first(FindingsReport report) {
    return report.actions().stream()
        .flatMap(action -> action.findings().stream().sorted(BY_SEVERITY))
        .filter(finding -> finding.severity() != Severity.NOTE)
        .findFirst()
        .map(Key::of);
  }

  private static Reason reason(Finding finding) {
    Optional<Reason> ofImages =
        OF_IMAGES.entrySet().stream()
            .filter(area -> finding.ruleId().startsWith(area.getKey()))
            .map(Map.Entry::getValue)
            .findFirst();
    if (ofImages.isPresent()) {
      return ofImages.get();
    }
    if (finding.location().recordType().orElse(0) == FEATURES) {
      return Reason.FEATURES_REPLACED;
    }
    return finding.location().field().isPresent() ? Reason.VALUE_REPLACED : Reason.CONTENT_REPLACED;
  }
}
