package ridgeproof.examination;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.Positions;
import ridgeproof.finding.Finding;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.Code;
import ridgeproof.spec.rule.RuleRow.Capture;

/** Remedies that suit how a print was captured: a slap is not rolled, a card is not placed. */
final class CaptureRemedies {

  private static final Set<String> SEVERAL_FINGERS = Set.of("slap", "combination");

  private final SpecTables tables;
  private final Map<Integer, ExaminedImage> images;

  CaptureRemedies(List<ExaminedImage> images, SpecTables tables) {
    this.tables = tables;
    this.images =
        images.stream()
            .collect(Collectors.toMap(image -> image.record().ordinal(), Function.identity()));
  }

  /** The finding with the remedy for its capture, or as it is. */
  Finding suited(Finding finding) {
    return finding.location().record().stream()
        .mapToObj(images::get)
        .filter(image -> image != null)
        .flatMap(image -> capture(image, tables).stream())
        .flatMap(capture -> tables.catalogue().remedy(finding.ruleId(), capture).stream())
        .map(remedy -> finding.withRemedy(remedy.replace("{finger}", finger(finding))))
        .findFirst()
        .orElse(finding);
  }

  private String finger(Finding finding) {
    return finding.location().position().isPresent()
        ? "the " + tables.positionName(finding.location().position().getAsInt())
        : "the finger";
  }

  /** How the print was captured; empty where the impression type does not say. */
  static Optional<Capture> capture(ExaminedImage image, SpecTables tables) {
    return image.impression().stream()
        .mapToObj(type -> tables.codes("impressions").find(Integer.toString(type)))
        .flatMap(Optional::stream)
        .findFirst()
        .flatMap(type -> capture(type, image, new Positions(tables)));
  }

  private static Optional<Capture> capture(Code type, ExaminedImage image, Positions positions) {
    String kind = type.property("kind");
    if (!kind.equals("rolled") && !kind.equals("plain")) {
      return Optional.empty();
    }
    if (type.property("live").equals("no")) {
      return Optional.of(Capture.CARD);
    }
    if (kind.equals("rolled")) {
      return Optional.of(Capture.ROLLED);
    }
    boolean several =
        image.positions().stream().map(positions::kind).anyMatch(SEVERAL_FINGERS::contains);
    return Optional.of(several ? Capture.SLAP : Capture.PLAIN);
  }
}
