package ridgeproof.calibration.statistics;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import ridgeproof.calibration.print.ReferencePrints;
import ridgeproof.examination.facts.RidgeAnalysis.Impression;
import ridgeproof.ridges.matching.Minutiae;
import ridgeproof.spec.layout.FingerPosition;

/**
 * Every print of one ten-print card: ten rolls, and the same fingers laid flat.
 *
 * @param rolls the templates of the rolls found
 * @param plains the templates of the plain prints found
 */
public record ObservedCard(
    List<ObservedPrint> prints,
    Map<FingerPosition, Minutiae> rolls,
    Map<FingerPosition, Minutiae> plains) {

  static ObservedCard of(List<ObservedPrint.Comparand> prints) {
    return new ObservedCard(
        prints.stream().map(ObservedPrint.Comparand::print).toList(),
        templates(prints, Impression.ROLLED),
        templates(prints, Impression.PLAIN));
  }

  private static Map<FingerPosition, Minutiae> templates(
      List<ObservedPrint.Comparand> prints, Impression kind) {
    Map<FingerPosition, Minutiae> templates = new EnumMap<>(FingerPosition.class);
    for (ObservedPrint.Comparand one : prints) {
      if (one.print().kind() == kind) {
        one.template().ifPresent(template -> templates.put(one.print().finger(), template));
      }
    }
    return templates;
  }

  /**
   * The card of a real person.
   *
   * @throws IOException if it cannot be read
   */
  public static ObservedCard real(Path file) throws IOException {
    List<ObservedPrint.Comparand> prints = new ArrayList<>();
    for (ReferencePrints.Image image : ReferencePrints.images(file)) {
      Impression kind = image.isRolled() ? Impression.ROLLED : Impression.PLAIN;
      prints.addAll(ObservedPrint.look(image.gray(), image.ppi(), image.box(), kind, Map.of()));
    }
    return of(prints);
  }
}
