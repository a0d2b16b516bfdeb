package ridgeproof.examination;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import ridgeproof.examination.RidgeFacts.Impression;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.PixelDensity;
import ridgeproof.imagery.measure.PrintFacts;
import ridgeproof.ridges.FingerAnalyzer;
import ridgeproof.ridges.FingerPosition;
import ridgeproof.ridges.SlapAnalysis;
import ridgeproof.ridges.SlapAnalyzer;
import ridgeproof.spec.SpecTables;
import ridgeproof.transaction.Transaction;

/** Looks at the ridges of images for which fingers were laid down. */
final class RidgeSight {

  private static final int BILEVEL = 2;
  private static final int LAST_ROLL = 10;

  private final Positions positions;
  private final MissingFingers missing;
  private final double blankShare;

  RidgeSight(Transaction transaction, SpecTables tables) {
    positions = new Positions(tables);
    missing = new MissingFingers(transaction, tables);
    blankShare = tables.pixelLimits().limit("blank-share").share();
  }

  /** Nothing for palms, for traces and for what shows nothing: other rules tell of those. */
  Optional<RidgeFacts> look(ExaminedImage image, GrayImage pixels, PixelFacts facts) {
    if (!image.layout().frictionRidge()
        || image.position().isEmpty()
        || image.density().isEmpty()
        || isTrace(image)
        || facts.grayLevels() <= BILEVEL
        || facts.print().map(PrintFacts::markedShare).orElse(0.0) < blankShare) {
      return Optional.empty();
    }
    int code = image.position().getAsInt();
    List<FingerPosition> shown = FingerPosition.shownBy(code);
    if (shown.isEmpty()) {
      return Optional.empty();
    }
    double ppi = ppi(image.density().get());
    if (shown.size() == 1) {
      return Optional.of(
          new RidgeFacts(
              impression(image, code),
              Map.of(shown.get(0), FingerAnalyzer.analyse(pixels, ppi)),
              Optional.empty()));
    }
    List<FingerPosition> expected =
        shown.stream().filter(finger -> missing.of(finger.code()).isEmpty()).toList();
    if (expected.isEmpty()) {
      return Optional.empty();
    }
    SlapAnalysis analysis = SlapAnalyzer.analyse(pixels, ppi, expected);
    return Optional.of(
        new RidgeFacts(Impression.PLAIN, analysis.fingers(), Optional.of(analysis.slap())));
  }

  private boolean isTrace(ExaminedImage image) {
    return positions.impressionKind(image.impression()).equals("latent");
  }

  /** Boxes 1 to 10 may hold plain prints; where nothing is said they hold rolls. */
  private Impression impression(ExaminedImage image, int code) {
    return code <= LAST_ROLL && !positions.impressionKind(image.impression()).equals("plain")
        ? Impression.ROLLED
        : Impression.PLAIN;
  }

  private static double ppi(PixelDensity density) {
    return Math.sqrt(density.horizontalPpi() * density.verticalPpi());
  }
}
