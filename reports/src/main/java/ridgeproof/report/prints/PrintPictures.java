package ridgeproof.report.prints;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.ImageExtraction;
import ridgeproof.finding.Finding;
import ridgeproof.imagery.DecodingLimits;
import ridgeproof.imagery.GrayImage;
import ridgeproof.report.prints.Mark.Kind;
import ridgeproof.report.prints.PrintPicture.View;
import ridgeproof.spec.layout.FingerPosition;
import ridgeproof.spec.rule.Severity;

/** The pictures beside a step: each print that its findings are about, once. */
public final class PrintPictures {

  /** More pictures than these help nobody; the list of places names the others. */
  public static final int MAX_PICTURES = 4;

  private static final Set<String> AREAS = Set.of("RDG", "SEQ");

  /** Findings of other areas that are about what is seen of a print. */
  private static final Set<String> SEEN =
      Set.of(
          "RP-IMG-009",
          "RP-IMG-019",
          "RP-IMG-020",
          "RP-IMG-021",
          "RP-IMG-033",
          "RP-IMG-034",
          "RP-IMG-035",
          "RP-IMG-037",
          "RP-IMG-039",
          "RP-IMG-044",
          "RP-IMG-047",
          "RP-IMG-048",
          "RP-IMG-053",
          "RP-TXN-003",
          "RP-TXN-005",
          "RP-TXN-009",
          "RP-TXN-080");

  private static final Set<String> SEGMENTS =
      Set.of("RP-RDG-021", "RP-IMG-019", "RP-IMG-020", "RP-IMG-021");

  private static final double MARGIN_SHARE = 0.12;
  private static final double RIM_SHARE = 0.02;

  private final FindingsReport report;
  private final Optional<Function<ExaminedImage, Optional<GrayImage>>> pixels;
  private final ConcernedPrints concerned;
  private final PrintNames names;
  private final ImageExtraction extraction;

  /**
   * @param pixels decodes an image; without it drawings are made, for prints are personal data
   */
  public PrintPictures(
      FindingsReport report, Optional<Function<ExaminedImage, Optional<GrayImage>>> pixels) {
    this.report = report;
    this.pixels = pixels;
    this.concerned = new ConcernedPrints(report);
    this.names = new PrintNames(report.tables());
    this.extraction = new ImageExtraction(report.tables(), DecodingLimits.standard());
  }

  /** The first pictures for these findings; several fingers of one slap share a picture. */
  public List<PrintPicture> of(List<Finding> findings) {
    Map<Print, List<Finding>> byPrint = new LinkedHashMap<>();
    for (Finding finding : findings) {
      if (isSeen(finding)) {
        for (Print print : concerned.of(finding)) {
          byPrint.computeIfAbsent(print, key -> new ArrayList<>()).add(finding);
        }
      }
    }
    Map<Integer, List<Print>> byRecord =
        byPrint.keySet().stream()
            .collect(Collectors.groupingBy(Print::record, LinkedHashMap::new, Collectors.toList()));
    return byRecord.values().stream()
        .limit(MAX_PICTURES)
        .flatMap(prints -> picture(prints, byPrint).stream())
        .toList();
  }

  private static boolean isSeen(Finding finding) {
    return finding.severity() != Severity.NOTE
        && (AREAS.contains(finding.rule().area()) || SEEN.contains(finding.ruleId()));
  }

  private Optional<PrintPicture> picture(List<Print> prints, Map<Print, List<Finding>> findings) {
    ExaminedImage image = prints.get(0).image();
    int width = image.pixels().map(facts -> facts.width()).orElse(image.trueWidth().orElse(0));
    int height = image.pixels().map(facts -> facts.height()).orElse(image.trueHeight().orElse(0));
    if (width < 1 || height < 1) {
      return Optional.empty();
    }
    Optional<GrayImage> whole =
        pixels
            .flatMap(decode -> decode.apply(image))
            .filter(decoded -> decoded.width() == width && decoded.height() == height);
    PictureMarks marks = new PictureMarks();
    if (whole.isEmpty()) {
      grounds(prints, marks);
    }
    for (Print print : prints) {
      for (Finding finding : findings.get(print)) {
        if (SEGMENTS.contains(finding.ruleId())) {
          segments(print, marks);
        } else {
          new FaultMarks(print, marks, whole.isPresent()).draw(finding);
        }
      }
      concerned.answer(print, names).ifPresent(answer -> marks.note("This print " + answer + "."));
    }
    View view = view(prints, marks, width, height);
    return Optional.of(
        new PrintPicture(
            name(prints),
            marks.notes(),
            image.record().ordinal(),
            width,
            height,
            view,
            whole.map(decoded -> part(decoded, view)),
            marks.list()));
  }

  private String name(List<Print> prints) {
    Print first = prints.get(0);
    return names.of(
        first.image(), prints.size() == 1 ? first.position() : first.image().position());
  }

  /** The shapes of all prints of the image, where it is not shown itself. */
  private static void grounds(List<Print> prints, PictureMarks marks) {
    prints.get(0).image().ridges().stream()
        .flatMap(facts -> facts.fingers().entrySet().stream())
        .filter(finger -> prints.size() > 1 || isMeant(prints.get(0), finger.getKey()))
        .flatMap(finger -> finger.getValue().measures().stream())
        .forEach(found -> marks.ground(found.maps()));
  }

  private static boolean isMeant(Print print, FingerPosition finger) {
    return print.finger().isEmpty() || print.finger().get() == finger;
  }

  private void segments(Print print, PictureMarks marks) {
    print.box().ifPresent(box -> marks.box(Kind.PRINT, box));
    extraction.markedFingersOf(print.image()).stream()
        .filter(
            marked -> print.finger().isEmpty() || marked.position() == print.finger().get().code())
        .forEach(
            marked -> {
              marks.rectangle(
                  Kind.FAULT, marked.left(), marked.top(), marked.right(), marked.bottom());
              marks.note("Heavy box: what the record marks. Thin box: the print that was found.");
            });
  }

  /** One finger of a slap is shown large; everything else with its whole image. */
  private static View view(List<Print> prints, PictureMarks marks, int width, int height) {
    Rectangle2D shown = new Rectangle2D.Double(0, 0, width, height);
    boolean single =
        prints.size() == 1 && prints.get(0).isInSlap() && prints.get(0).box().isPresent();
    if (single && marks.bounds().getWidth() > 0) {
      Rectangle2D part = marks.bounds();
      double margin = MARGIN_SHARE * Math.max(part.getWidth(), part.getHeight());
      shown =
          shown.createIntersection(
              new Rectangle2D.Double(
                  part.getX() - margin,
                  part.getY() - margin,
                  part.getWidth() + 2 * margin,
                  part.getHeight() + 2 * margin));
    }
    int rim = (int) Math.ceil(RIM_SHARE * Math.max(shown.getWidth(), shown.getHeight()));
    int left = (int) shown.getX();
    int top = (int) shown.getY();
    int across = Math.max(1, Math.min(width - left, (int) Math.ceil(shown.getWidth())));
    int down = Math.max(1, Math.min(height - top, (int) Math.ceil(shown.getHeight())));
    return new View(left - rim, top - rim, across + 2 * rim, down + 2 * rim, left, top);
  }

  private static GrayImage part(GrayImage image, View view) {
    int rim = view.inLeft() - view.left();
    return image.part(view.inLeft(), view.inTop(), view.width() - 2 * rim, view.height() - 2 * rim);
  }
}
