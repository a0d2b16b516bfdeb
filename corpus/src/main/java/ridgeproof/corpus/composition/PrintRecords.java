package ridgeproof.corpus.composition;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ridgeproof.corpus.finger.Skin;
import ridgeproof.corpus.impression.FingerBox;
import ridgeproof.corpus.impression.PalmPlaceholder;
import ridgeproof.corpus.scenario.MissingFinger;
import ridgeproof.corpus.scenario.PalmPlan;
import ridgeproof.corpus.scenario.PrintPlan;
import ridgeproof.corpus.scenario.Scenario;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.PixelDensity;
import ridgeproof.imagery.codec.PngWriter;
import ridgeproof.imagery.wsq.WsqEncoder;
import ridgeproof.imagery.wsq.WsqEncoding;
import ridgeproof.spec.layout.FingerPosition;
import ridgeproof.transaction.writer.RecordDraft;

/** The records of fingers and palms: types 4, 14 and 15. */
final class PrintRecords {

  private static final int NO_FURTHER_POSITION = 255;
  private static final int LIVE_PLAIN = 0;
  private static final int LIVE_ROLLED = 1;
  private static final int LIVE_PALM = 10;
  private static final int SEGMENTS_SINCE = 400;
  private static final int PALM_PPI = 500;

  private final Scenario scenario;
  private final PrintPlan plan;

  PrintRecords(Scenario scenario) {
    this.scenario = scenario;
    this.plan = scenario.prints();
  }

  RecordDraft fingerprint(CapturedPrint print, int idc) {
    return plan.record() == 4 ? binary(print, idc) : tagged(print, idc);
  }

  private RecordDraft binary(CapturedPrint print, int idc) {
    GrayImage image = print.impression().image();
    int none = NO_FURTHER_POSITION;
    return Drafts.binary(4, idc)
        .number(3, 1, print.isRolled() ? LIVE_ROLLED : LIVE_PLAIN)
        .number(4, 1, print.box(), none, none, none, none, none)
        .number(5, 1, 0)
        .number(6, 2, image.width())
        .number(7, 2, image.height())
        .number(8, 1, plan.compression().binaryCode())
        .endingIn(9, stored(image, print.labelledPpi()));
  }

  private RecordDraft tagged(CapturedPrint print, int idc) {
    GrayImage image = print.impression().image();
    int impression = print.isRolled() ? LIVE_ROLLED : LIVE_PLAIN;
    Drafts drafts =
        described(14, idc, impression, image, print.labelledPpi()).text(13, print.box());
    if (scenario.transaction().versionNumber() >= SEGMENTS_SINCE) {
      addMissing(print, drafts);
      if (plan.segments() && print.showsSeveral()) {
        drafts.items(21, segments(print));
      }
      if (plan.alternateSegments() && print.showsSeveral()) {
        drafts.items(25, polygons(print));
      }
    }
    return drafts.endingIn(999, stored(image, print.labelledPpi()));
  }

  private void addMissing(CapturedPrint print, Drafts drafts) {
    List<List<String>> missing = new ArrayList<>();
    for (FingerPosition digit : FingerPosition.shownBy(print.box())) {
      for (MissingFinger entry : scenario.missing()) {
        if (entry.finger() == digit.code() && !entry.undeclared()) {
          missing.add(List.of(Integer.toString(entry.finger()), entry.reason()));
        }
      }
    }
    if (!missing.isEmpty()) {
      drafts.items(18, missing);
    }
  }

  private static List<List<String>> segments(CapturedPrint print) {
    List<List<String>> segments = new ArrayList<>();
    for (int i = 0; i < print.labels().size(); i++) {
      FingerBox box = print.impression().boxes().get(i);
      segments.add(
          words(print.labels().get(i).code(), box.left(), box.right(), box.top(), box.bottom()));
    }
    return segments;
  }

  private static List<List<String>> polygons(CapturedPrint print) {
    List<List<String>> polygons = new ArrayList<>();
    for (int i = 0; i < print.labels().size(); i++) {
      FingerBox box = print.impression().boxes().get(i);
      polygons.add(
          words(
              print.labels().get(i).code(),
              4,
              box.left(),
              box.top(),
              box.right(),
              box.top(),
              box.right(),
              box.bottom(),
              box.left(),
              box.bottom()));
    }
    return polygons;
  }

  private static List<String> words(int... numbers) {
    List<String> words = new ArrayList<>();
    for (int number : numbers) {
      words.add(Integer.toString(number));
    }
    return words;
  }

  RecordDraft palm(PalmPlan palm, SubjectCache people, int idc) {
    FingerPosition texture =
        palm.position() <= 22 ? FingerPosition.RIGHT_MIDDLE : FingerPosition.LEFT_MIDDLE;
    GrayImage image =
        PalmPlaceholder.render(
            people.finger(scenario.person(), texture, Skin.smooth()),
            palm.frame(),
            scenario.seed() * 100 + palm.position());
    return described(15, idc, LIVE_PALM, image, PALM_PPI)
        .text(13, palm.position())
        .endingIn(999, stored(image, PALM_PPI));
  }

  /** Fields 3 to 12, which types 14 and 15 have in common. */
  private Drafts described(int type, int idc, int impression, GrayImage image, int ppi) {
    return Drafts.tagged(type, idc)
        .text(3, impression)
        .text(4, scenario.transaction().originator())
        .text(5, scenario.transaction().date())
        .text(6, image.width())
        .text(7, image.height())
        .text(8, 1)
        .text(9, ppi)
        .text(10, ppi)
        .text(11, plan.compression().taggedCode())
        .text(12, 8);
  }

  private byte[] stored(GrayImage image, int ppi) {
    return switch (plan.compression()) {
      case NONE -> image.toArray();
      case WSQ -> WsqEncoder.encode(image, new WsqEncoding(plan.bitsPerPixel(), ppi, 0));
      case PNG -> PngWriter.encode(image, Optional.of(PixelDensity.ofPpi(ppi)));
    };
  }
}
