package ridgeproof.report.prints;

import java.awt.geom.Point2D;
import java.util.List;
import java.util.Optional;
import ridgeproof.examination.facts.RidgeAnalysis;
import ridgeproof.finding.Finding;
import ridgeproof.imagery.PixelDensity;
import ridgeproof.report.prints.Mark.Kind;
import ridgeproof.ridges.map.EdgeContact;
import ridgeproof.ridges.map.RotatedBox;
import ridgeproof.ridges.pattern.SingularPoint;
import ridgeproof.ridges.quality.BlockMap;
import ridgeproof.ridges.quality.FingerMeasures;
import ridgeproof.ridges.segmentation.Segment;
import ridgeproof.ridges.segmentation.Slap;
import ridgeproof.ridges.segmentation.TipSide;

/** Draws what a finding is about on its print. */
final class FaultMarks {

  private static final double UNSTATED_PPI = 500;
  private static final double RING_MM = 2;
  private static final double MINUTIA_MM = 0.4;

  /** Part of a period that is ridge, as {@code ToneMeasure} counts dry and dark blocks. */
  private static final double DRY = 0.4;

  private static final double DARK = 0.6;
  private static final double UNCLEAR = 0.4;
  private static final double DIRECTED = 0.2;
  private static final double GAP_MM = 1;

  private final Print print;
  private final PictureMarks marks;
  private final boolean withPixels;
  private final double mm;

  FaultMarks(Print print, PictureMarks marks, boolean withPixels) {
    this.print = print;
    this.marks = marks;
    this.withPixels = withPixels;
    this.mm =
        print
                .image()
                .density()
                .map(PixelDensity::meanPpi)
                .filter(ppi -> ppi > 0)
                .orElse(UNSTATED_PPI)
            / PixelDensity.MM_PER_INCH;
  }

  void draw(Finding finding) {
    switch (finding.ruleId()) {
      case "RP-RDG-003" -> narrow();
      case "RP-RDG-004" -> where("Hatched: ridges that are thin and broken.", this::isDry);
      case "RP-RDG-005" -> where("Hatched: ridges that run together.", this::isDark);
      case "RP-RDG-006" -> smear();
      case "RP-RDG-007" -> gap();
      case "RP-RDG-008" -> core();
      case "RP-RDG-009" -> tilt();
      case "RP-RDG-010" -> cut();
      case "RP-RDG-014" -> minutiae();
      case "RP-RDG-011", "RP-RDG-012", "RP-RDG-015", "RP-RDG-017" ->
          where("Hatched: ridges that are not clear.", this::isUnclear);
      case "RP-RDG-002" -> area();
      case "RP-RDG-020" -> absent();
      case "RP-SEQ-021", "RP-SEQ-024", "RP-SEQ-025" -> turned();
      case "RP-IMG-039" -> wholePrint();
      default -> outline();
    }
  }

  private interface Blocks {
    boolean meant(BlockMap map, int column, int row);
  }

  private boolean isDry(BlockMap map, int column, int row) {
    return map.isRidge(column, row) && map.ridgeShare(column, row) < DRY;
  }

  private boolean isDark(BlockMap map, int column, int row) {
    return map.isPrint(column, row)
        && (!map.isRidge(column, row) || map.ridgeShare(column, row) > DARK);
  }

  private boolean isUnclear(BlockMap map, int column, int row) {
    return map.isPrint(column, row)
        && (!map.isRidge(column, row) || map.clarity(column, row) < UNCLEAR);
  }

  private void where(String words, Blocks blocks) {
    outline();
    Optional<BlockMap> map = print.measures().map(FingerMeasures::maps);
    if (map.isPresent()
        && marks.hatch(map.get(), (column, row) -> blocks.meant(map.get(), column, row))) {
      marks.note(words);
    }
  }

  private void area() {
    outline();
    print
        .measures()
        .map(FingerMeasures::maps)
        .filter(map -> marks.hatch(map, map::isRidge))
        .ifPresent(map -> marks.note("Hatched: the area with clear ridges, which is too small."));
  }

  /** At a wrong resolution a print is seen, and yet not found. */
  private void wholePrint() {
    print.box().ifPresent(box -> marks.box(Kind.FAULT, box));
  }

  /** A line around the print, or that none was found where one was looked for. */
  private void outline() {
    Optional<RotatedBox> box = print.box();
    if (box.isPresent()) {
      marks.box(Kind.FAULT, box.get());
    } else if (print.image().ridges().isEmpty()) {
      return;
    } else if (print.finger().isPresent() || !print.isInSlap()) {
      marks.note("No print was found in the image.");
    } else {
      slap().stream()
          .flatMap(slap -> slap.segments().stream())
          .flatMap(segment -> segment.box().stream())
          .forEach(each -> marks.box(Kind.PRINT, each));
    }
  }

  private Optional<Slap> slap() {
    return print.image().ridges().flatMap(RidgeAnalysis::slap);
  }

  private void narrow() {
    print.box().ifPresent(box -> marks.box(Kind.PRINT, box));
    print
        .box()
        .ifPresent(
            box -> {
              marks.arrow(Kind.FAULT, at(box, -0.5, 0), at(box, 0.5, 0), true);
              marks.note("Arrow: the width of the print, which is too small for a rolled print.");
            });
  }

  /** A place in a box: from -0.5 to 0.5 across and along the finger, the tip at -0.5. */
  private static Point2D at(RotatedBox box, double across, double along) {
    double turn = Math.toRadians(box.degrees());
    double x = across * box.width();
    double y = along * box.height();
    return new Point2D.Double(
        box.centreX() + x * Math.cos(turn) - y * Math.sin(turn),
        box.centreY() + x * Math.sin(turn) + y * Math.cos(turn));
  }

  private void smear() {
    where(
        "Hatched: where the print is smeared.",
        (map, column, row) -> map.isPrint(column, row) && !map.isRidge(column, row));
    print
        .measures()
        .filter(found -> found.smear().directionality() > DIRECTED)
        .ifPresent(
            found -> {
              RotatedBox box = found.extent().box();
              double turn = Math.toRadians(found.smear().degrees());
              double reach = box.width() / 4;
              double x = reach * Math.cos(turn);
              double y = reach * Math.sin(turn);
              marks.arrow(
                  Kind.FAULT,
                  new Point2D.Double(box.centreX() - x, box.centreY() - y),
                  new Point2D.Double(box.centreX() + x, box.centreY() + y),
                  true);
              marks.note("Arrow: the direction of the streaks.");
            });
  }

  /** The longest way without ridges between ridges, row by row. */
  private void gap() {
    where("Hatched: where the ridges break off.", this::isGap);
  }

  private boolean isGap(BlockMap map, int column, int row) {
    if (map.isRidge(column, row)) {
      return false;
    }
    int left = column;
    int right = column;
    while (left >= 0 && !map.isRidge(left, row)) {
      left--;
    }
    while (right < map.columns() && !map.isRidge(right, row)) {
      right++;
    }
    return left >= 0
        && right < map.columns()
        && (right - left - 1) * map.blockPixels() >= GAP_MM * mm;
  }

  private void core() {
    if (print.finger().isEmpty()) {
      outline();
      return;
    }
    print.box().ifPresent(box -> marks.box(Kind.PRINT, box));
    Optional<SingularPoint> core = print.measures().flatMap(found -> found.pattern().core());
    if (core.isPresent()) {
      marks.ring(Kind.FAULT, core.get().x(), core.get().y(), RING_MM * mm, RING_MM * mm);
      marks.note("Ring: the core, too close to the border of the print.");
      return;
    }
    print
        .box()
        .ifPresent(
            box -> {
              marks.ring(
                  Kind.EXPECTED,
                  box.centreX(),
                  box.centreY(),
                  1.5 * RING_MM * mm,
                  1.5 * RING_MM * mm);
              marks.question(Kind.FAULT, box.centreX(), box.centreY(), RING_MM * mm);
              marks.note("Dashed ring: no core was found in the print.");
            });
  }

  private void tilt() {
    List<RotatedBox> boxes =
        print.finger().isPresent()
            ? print.box().stream().toList()
            : slap().stream()
                .flatMap(slap -> slap.segments().stream())
                .flatMap(segment -> segment.box().stream())
                .toList();
    double hand = slap().filter(slap -> print.finger().isEmpty()).map(Slap::degrees).orElse(0.0);
    for (RotatedBox box : boxes) {
      double degrees =
          print.finger().isPresent()
              ? print.measures().map(found -> found.rotation().degrees()).orElse(box.degrees())
              : hand;
      RotatedBox leaning =
          new RotatedBox(box.centreX(), box.centreY(), box.width(), box.height(), degrees);
      marks.box(Kind.PRINT, box);
      marks.arrow(Kind.FAULT, at(leaning, 0, 0.5), at(leaning, 0, -0.5), false);
      Point2D base = at(leaning, 0, 0.5);
      marks.line(Kind.EXPECTED, base.getX(), base.getY(), base.getX(), base.getY() - box.height());
      marks.note("Arrow: the direction of the finger. Dashed: straight up.");
    }
  }

  private void cut() {
    print.box().ifPresent(box -> marks.box(Kind.PRINT, box));
    Optional<FingerMeasures> found = print.measures();
    if (found.isEmpty()) {
      return;
    }
    EdgeContact edges = found.get().extent().edges();
    BlockMap map = found.get().maps();
    if (edges.isCutAtTop()) {
      cutRow(map, 0, 0);
    }
    if (edges.isCutAtBottom()) {
      cutRow(map, map.rows() - 1, height());
    }
    if (edges.isCutAtSide() && edges.leftMm() >= edges.rightMm()) {
      cutColumn(map, 0, 0);
    }
    if (edges.isCutAtSide() && edges.rightMm() > edges.leftMm()) {
      cutColumn(map, map.columns() - 1, width());
    }
    marks.note("Heavy line: the edge of the image cuts the print here.");
  }

  private double width() {
    return print.image().trueWidth().orElse(0);
  }

  private double height() {
    return print.image().trueHeight().orElse(0);
  }

  private void cutRow(BlockMap map, int row, double y) {
    int first = -1;
    int last = -1;
    for (int column = 0; column < map.columns(); column++) {
      if (map.isPrint(column, row)) {
        first = first < 0 ? column : first;
        last = column;
      }
    }
    if (first >= 0) {
      double side = map.blockPixels();
      marks.line(Kind.FAULT, first * side, y, (last + 1) * side, y);
    }
  }

  private void cutColumn(BlockMap map, int column, double x) {
    int first = -1;
    int last = -1;
    for (int row = 0; row < map.rows(); row++) {
      if (map.isPrint(column, row)) {
        first = first < 0 ? row : first;
        last = row;
      }
    }
    if (first >= 0) {
      double side = map.blockPixels();
      marks.line(Kind.FAULT, x, first * side, x, (last + 1) * side);
    }
  }

  /** Minutiae are as good as the print, so that they are drawn only where the print is shown. */
  private void minutiae() {
    outline();
    if (withPixels) {
      print.measures().stream()
          .flatMap(found -> found.minutiae().list().stream())
          .forEach(
              each -> marks.ring(Kind.FAULT, each.x(), each.y(), MINUTIA_MM * mm, MINUTIA_MM * mm));
      marks.note("Rings: the minutiae that were found.");
    }
  }

  /** Boxes around the prints that are there, and a place between or beside them for each other. */
  private void absent() {
    List<Segment> segments = slap().map(Slap::segments).orElse(List.of());
    List<RotatedBox> found = segments.stream().flatMap(each -> each.box().stream()).toList();
    found.forEach(box -> marks.box(Kind.PRINT, box));
    marks.note("Thin boxes: the prints that were found.");
    if (segments.isEmpty()) {
      return;
    }
    double slot = width() / segments.size();
    for (int i = 0; i < segments.size(); i++) {
      boolean meant =
          print.finger().isEmpty() || print.finger().get() == segments.get(i).position();
      if (meant && segments.get(i).box().isEmpty()) {
        double x = place(segments, i, slot);
        double y = found.stream().mapToDouble(RotatedBox::centreY).average().orElse(height() / 2);
        marks.ring(Kind.EXPECTED, x, y, slot / 3, slot / 2);
        marks.question(Kind.FAULT, x, y, slot / 5);
        marks.note("Dashed: where a finger is missing.");
      }
    }
  }

  /** Between the neighbors that were found, or beside the only one. */
  private static double place(List<Segment> segments, int index, double slot) {
    Optional<RotatedBox> before =
        index > 0 ? segments.get(index - 1).box() : Optional.<RotatedBox>empty();
    Optional<RotatedBox> after =
        index + 1 < segments.size() ? segments.get(index + 1).box() : Optional.<RotatedBox>empty();
    if (before.isPresent() && after.isPresent()) {
      return (before.get().centreX() + after.get().centreX()) / 2;
    }
    return before
        .map(box -> box.centreX() + slot)
        .or(() -> after.map(box -> box.centreX() - slot))
        .orElse((index + 0.5) * slot);
  }

  private void turned() {
    outline();
    print
        .measures()
        .ifPresent(
            found -> {
              RotatedBox box = found.extent().box();
              TipSide tip = TipSide.of(found);
              double length = Math.max(1e-9, Math.hypot(tip.right(), tip.up()));
              double reach = Math.min(box.width(), box.height()) / 2.5;
              marks.arrow(
                  Kind.FAULT,
                  new Point2D.Double(box.centreX(), box.centreY()),
                  new Point2D.Double(
                      box.centreX() + reach * tip.right() / length,
                      box.centreY() - reach * tip.up() / length),
                  false);
              marks.note("Arrow: where the fingertip points.");
            });
  }
}
