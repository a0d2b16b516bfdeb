package ridgeproof.report.comparison;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import ridgeproof.examination.comparison.FingerCapture;
import ridgeproof.examination.comparison.FingerChange;
import ridgeproof.examination.comparison.FingerComparison;
import ridgeproof.examination.comparison.ImageDifference;
import ridgeproof.examination.comparison.ImageDifference.DifferentPixels;
import ridgeproof.examination.comparison.ImageDifference.DifferentSize;
import ridgeproof.examination.comparison.ImageDifference.NotDecoded;
import ridgeproof.examination.comparison.ImageDifference.NotOpened;
import ridgeproof.examination.comparison.ImageDifference.SamePixels;
import ridgeproof.examination.comparison.PrintComparison;
import ridgeproof.examination.comparison.PrintComparison.Answer;
import ridgeproof.examination.comparison.PrintComparison.Reason;
import ridgeproof.examination.comparison.RecordPair;
import ridgeproof.examination.comparison.TransactionComparison;
import ridgeproof.examination.comparison.ValueDifference;
import ridgeproof.examination.facts.Depth;
import ridgeproof.finding.Finding;
import ridgeproof.report.FileFacts;
import ridgeproof.report.PilotCard;
import ridgeproof.report.Renderings;
import ridgeproof.ridges.quality.FingerAnalysis;
import ridgeproof.ridges.quality.QualityScore;
import ridgeproof.ridges.quality.QualityScore.Aspect;
import ridgeproof.ridges.quality.QualityScore.Part;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.layout.FingerPosition;

/** A comparison in which everything that can be said of two files is to be said once. */
final class MadeComparison {

  static final FileFacts FIRST = new FileFacts("first.an2", 12345, "a".repeat(64));
  static final FileFacts SECOND = new FileFacts("second.an2", 1, "b".repeat(64));

  private MadeComparison() {}

  static TransactionComparison all() {
    TransactionComparison base =
        Renderings.compare(
            PilotCard.ascii().without(4).header(5, "20261399").particular(20, "US").bytes(),
            PilotCard.ascii()
                .without(7)
                .without(8)
                .header(9, "PILOT-0002")
                .header(10, "PILOT-0001")
                .particular(18, "SPECIMEN,BEA")
                .bytes(),
            Depth.STRUCTURE);
    return new TransactionComparison(
        base.first(),
        base.second(),
        Depth.RIDGES,
        base.ignored(),
        false,
        pairs(base.pairs()),
        base.removed(),
        base.added(),
        base.changes(),
        fingers(base),
        base.personDoubt(),
        true,
        true);
  }

  /** The third pair and those after it are of images, one of each kind of difference. */
  private static List<RecordPair> pairs(List<RecordPair> base) {
    List<RecordPair> pairs = new ArrayList<>(base);
    List<ImageDifference> images =
        List.of(
            new SamePixels(),
            new DifferentPixels(7, 1.23456, 12, 768, 0.97),
            new DifferentSize(32, 24, 25, 26),
            new NotDecoded(true, false),
            new NotDecoded(false, true),
            new NotDecoded(false, false),
            new NotOpened());
    for (int i = 0; i < images.size(); i++) {
      pairs.set(2 + i, with(base.get(2 + i), images.get(i), Optional.empty()));
    }
    DifferentPixels other = new DifferentPixels(200, 80, 700, 768, 0.1);
    pairs.set(4, with(base.get(4), images.get(2), prints(same(3, 88.12345))));
    pairs.set(9, with(base.get(9), other, prints(different(10, 3.5, 9, 71.23456))));
    pairs.set(10, with(base.get(10), other, prints()));
    pairs.set(
        12,
        with(
            base.get(12),
            other,
            prints(
                same(2, 90),
                untold(3, Reason.NOT_ALIKE),
                untold(4, Reason.NOT_ALIKE),
                untold(5, Reason.TOO_FEW_MINUTIAE))));
    pairs.set(1, differing(base.get(1)));
    return pairs;
  }

  private static RecordPair with(
      RecordPair pair, ImageDifference image, Optional<FingerComparison> fingers) {
    return new RecordPair(
        pair.first(), pair.second(), false, false, List.of(), Optional.of(image), true, fingers);
  }

  private static RecordPair differing(RecordPair pair) {
    List<ValueDifference> values = new ArrayList<>(pair.differences());
    values.add(value(37, "PILOT LICENCE", "PILOT LICENSE", 2, 3, false));
    values.add(value(38, "20260302", "", 0, 0, true));
    values.add(value(2, "00", "01", 0, 0, true));
    values.add(value(1, "90", "91", 0, 0, true));
    return new RecordPair(
        pair.first(), pair.second(), true, true, values, Optional.empty(), false, Optional.empty());
  }

  private static ValueDifference value(
      int field, String first, String second, int subfield, int item, boolean ignored) {
    return new ValueDifference(
        new FieldNumber(2, field),
        subfield == 0 ? OptionalInt.empty() : OptionalInt.of(subfield),
        item == 0 ? OptionalInt.empty() : OptionalInt.of(item),
        Optional.of(first).filter(text -> !text.isEmpty()),
        Optional.of(second).filter(text -> !text.isEmpty()),
        Math.max(1, item),
        ignored);
  }

  private static Optional<FingerComparison> prints(PrintComparison... prints) {
    return Optional.of(new FingerComparison(List.of(prints)));
  }

  private static FingerPosition finger(int code) {
    return FingerPosition.ofCode(code).orElseThrow();
  }

  private static PrintComparison same(int code, double similarity) {
    return print(code, Answer.SAME_FINGER, Reason.ALIKE, similarity);
  }

  private static PrintComparison untold(int code, Reason reason) {
    return print(code, Answer.CANNOT_BE_TOLD, reason, code);
  }

  private static PrintComparison print(int code, Answer answer, Reason reason, double similarity) {
    return new PrintComparison(
        finger(code), answer, reason, similarity, Optional.empty(), 0, Optional.empty());
  }

  private static PrintComparison different(
      int code, double similarity, int other, double otherSimilarity) {
    return new PrintComparison(
        finger(code),
        Answer.DIFFERENT_FINGER,
        Reason.SECOND_MATCHES_ANOTHER,
        similarity,
        Optional.of(finger(other)),
        otherSimilarity,
        Optional.empty());
  }

  /** Each trend and each advice. */
  private static List<FingerChange> fingers(TransactionComparison base) {
    Finding grave = base.changes().added().get(0);
    Finding other = base.changes().resolved().get(0);
    return List.of(
        change(base, 1, capture(base, 60), capture(base, 90), false),
        change(base, 2, capture(base, 90, grave), capture(base, 60, grave, other), false),
        change(base, 3, capture(base, 70, other), capture(base, 60), false),
        change(base, 4, Optional.empty(), capture(base, 60), false),
        change(base, 5, capture(base, 60), Optional.empty(), false),
        change(base, 6, capture(base, 60), capture(base, 60), true),
        change(base, 7, unseen(base), unseen(base, grave), false),
        change(base, 8, capture(base, 60), capture(base, 62), false));
  }

  private static FingerChange change(
      TransactionComparison base,
      int code,
      Optional<FingerCapture> first,
      Optional<FingerCapture> second,
      boolean same) {
    return new FingerChange(finger(code), code < 8, first, second, same);
  }

  /**
   * From a score of 60 to one of 90 clarity rises by 10, which is told, and the core by 9, which is
   * not.
   */
  private static Optional<FingerCapture> capture(
      TransactionComparison base, int score, Finding... problems) {
    List<Part> parts =
        List.of(
            new Part(Aspect.MINUTIAE, score, 1, 1),
            new Part(Aspect.CLARITY, score == 90 ? 70 : 60, 1, 1),
            new Part(Aspect.CORE, score == 90 ? 69 : 60, 1, 1),
            new Part(Aspect.MOISTURE, score == 90 ? 40 : 60, 1, 1));
    FingerAnalysis analysis =
        new FingerAnalysis(List.of(), Optional.empty(), new QualityScore(score, parts));
    return Optional.of(
        new FingerCapture(base.first().images().get(0), Optional.of(analysis), List.of(problems)));
  }

  private static Optional<FingerCapture> unseen(TransactionComparison base, Finding... problems) {
    return Optional.of(
        new FingerCapture(base.first().images().get(0), Optional.empty(), List.of(problems)));
  }
}
