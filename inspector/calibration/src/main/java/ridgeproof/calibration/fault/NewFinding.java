package ridgeproof.calibration.fault;

import java.util.HashSet;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import ridgeproof.corpus.fault.FaultPlace;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.finding.Finding;

/**
 * A finding that the clean file does not have.
 *
 * @param positions those that it names, and that of its image
 * @param field empty where it names none
 * @param image ordinal of the image record it is of; empty for another place
 */
public record NewFinding(String rule, Set<Integer> positions, String field, OptionalInt image) {

  public NewFinding {
    positions = Set.copyOf(positions);
  }

  static NewFinding of(Finding finding, Map<Integer, ExaminedImage> images) {
    Set<Integer> positions = new HashSet<>();
    finding.location().position().ifPresent(positions::add);
    finding
        .location()
        .record()
        .ifPresent(
            record -> {
              if (images.containsKey(record)) {
                images.get(record).position().ifPresent(positions::add);
              }
            });
    return new NewFinding(
        finding.ruleId(),
        positions,
        finding.location().field().map(Object::toString).orElse(""),
        finding.location().record().stream().filter(images::containsKey).findFirst());
  }

  /** Whether it says the same of another finger of the same image. */
  boolean repeats(NewFinding other) {
    return image.isPresent() && image.equals(other.image) && rule.equals(other.rule);
  }

  boolean liesIn(FaultPlace place) {
    return switch (place.kind()) {
      case FINGER -> positions.contains(Integer.valueOf(place.value()));
      case FIELD -> field.equals(place.value());
      case FILE -> positions.isEmpty() && field.isEmpty();
    };
  }

  @Override
  public String toString() {
    return rule
        + (field.isEmpty() ? "" : " " + field)
        + (positions.isEmpty() ? "" : " finger " + positions);
  }
}
