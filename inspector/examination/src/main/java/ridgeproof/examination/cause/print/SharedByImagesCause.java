package ridgeproof.examination.cause.print;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import ridgeproof.examination.cause.CauseLog;
import ridgeproof.examination.cause.CauseRule;
import ridgeproof.examination.cause.Consequences;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.finding.Finding;
import ridgeproof.finding.Location;
import ridgeproof.finding.Observed;

/**
 * What is wrong in the same way with nearly all images is a setting of the station, and one finding
 * of the file: the wrong compression, resolution or depth, or a size that each record states
 * wrongly.
 */
public final class SharedByImagesCause implements CauseRule {

  /** What a station is set to, and not what a hand did to one print. */
  private static final Set<String> SETTINGS =
      Set.of(
          "RP-IMG-001",
          "RP-IMG-002",
          "RP-IMG-003",
          "RP-IMG-005",
          "RP-IMG-007",
          "RP-IMG-008",
          "RP-IMG-009",
          "RP-IMG-011",
          "RP-IMG-012",
          "RP-IMG-016",
          "RP-IMG-017",
          "RP-IMG-018",
          "RP-IMG-023",
          "RP-IMG-024",
          "RP-IMG-031",
          "RP-IMG-032",
          "RP-IMG-035",
          "RP-IMG-041",
          "RP-IMG-042");

  private static final int SEVERAL = 3;
  private static final double NEARLY_ALL = 0.8;

  /** Detail that a compression took is no longer measured. */
  private static final String COMPRESSED = "RP-IMG-016";

  private static final Consequences OF_DETAIL =
      Consequences.ofRules("RP-RDG-011", "RP-RDG-012", "RP-RDG-014", "RP-RDG-015", "RP-RDG-017");

  @Override
  public Set<String> ids() {
    return Set.of();
  }

  @Override
  public void establish(ExaminationInput examinee, List<Finding> found, CauseLog causes) {
    Map<String, List<Finding>> byRule = new LinkedHashMap<>();
    for (Finding finding : open(found, causes)) {
      if (SETTINGS.contains(finding.ruleId()) && finding.location().record().isPresent()) {
        byRule.computeIfAbsent(finding.ruleId(), rule -> new ArrayList<>()).add(finding);
      }
    }
    Set<Integer> prints = ordinals(examinee.prints());
    Set<Integer> images = ordinals(examinee.images());
    byRule.forEach(
        (rule, findings) -> {
          boolean ofPrints = findings.stream().allMatch(f -> prints.contains(record(f)));
          report(rule, findings, ofPrints ? prints.size() : images.size(), causes);
        });
  }

  /** The records of images that have bytes. */
  private static Set<Integer> ordinals(List<ExaminedImage> images) {
    return ExaminedImage.ordinals(images.stream().filter(i -> i.data().isPresent()).toList());
  }

  private static int record(Finding finding) {
    return finding.location().record().orElseThrow();
  }

  /** Findings that no cause explains yet. */
  private static List<Finding> open(List<Finding> found, CauseLog causes) {
    return found.stream()
        .filter(
            finding ->
                causes.causes().stream().noneMatch(cause -> cause.consequences().include(finding)))
        .toList();
  }

  private static void report(String rule, List<Finding> findings, int images, CauseLog causes) {
    long records = findings.stream().map(SharedByImagesCause::record).distinct().count();
    boolean shared = records >= SEVERAL && records >= NEARLY_ALL * images;
    if (shared) {
      Finding worst = Collections.min(findings, Comparator.comparing(Finding::severity));
      boolean alike = findings.stream().allMatch(f -> f.required().equals(worst.required()));
      causes.add(
          rule,
          Location.file(),
          Observed.of(
              String.format(
                  Locale.ROOT, "%d of %d images, for example: %s", records, images, text(worst))),
          alike ? worst.required() : worst.required() + " in that image",
          Optional.of(worst.source()),
          worst.evidence(),
          Consequences.exactly(findings).or(ofDetail(rule, findings)));
    } else if (rule.equals(COMPRESSED)) {
      findings.forEach(finding -> causes.add(finding, ofDetail(rule, List.of(finding))));
    }
  }

  private static String text(Finding finding) {
    return finding.observed().text();
  }

  private static Consequences ofDetail(String rule, List<Finding> findings) {
    return rule.equals(COMPRESSED)
        ? findings.stream().map(OF_DETAIL::inRecordOf).reduce(Consequences.none(), Consequences::or)
        : Consequences.none();
  }
}
