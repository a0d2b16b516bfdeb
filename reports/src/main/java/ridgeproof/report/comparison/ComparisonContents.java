package ridgeproof.report.comparison;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.comparison.FindingChanges;
import ridgeproof.examination.comparison.FingerComparison;
import ridgeproof.examination.comparison.ImageDifference;
import ridgeproof.examination.comparison.ImageLevel;
import ridgeproof.examination.comparison.PrintComparison;
import ridgeproof.examination.comparison.PrintComparison.Answer;
import ridgeproof.examination.comparison.RecordPair;
import ridgeproof.examination.comparison.TransactionComparison;
import ridgeproof.examination.comparison.ValueDifference;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.finding.Finding;
import ridgeproof.imagery.GrayImage;
import ridgeproof.report.FileFacts;
import ridgeproof.report.ObservedText;
import ridgeproof.report.RenderOptions;
import ridgeproof.report.ReportPhrases;
import ridgeproof.report.TextSanitizer;
import ridgeproof.report.TruncatedText;
import ridgeproof.report.comparison.ComparisonPage.FileRow;
import ridgeproof.report.comparison.ComparisonPage.FindingLine;
import ridgeproof.report.comparison.ComparisonPage.ImagePart;
import ridgeproof.report.comparison.ComparisonPage.PairPart;
import ridgeproof.report.comparison.ComparisonPage.PrintRow;
import ridgeproof.report.comparison.ComparisonPage.ValueRow;
import ridgeproof.report.page.HtmlHead;
import ridgeproof.report.picture.AlignedPictures;
import ridgeproof.report.picture.DifferencePicture;
import ridgeproof.report.picture.PicturePair;
import ridgeproof.report.picture.Thumbnail;
import ridgeproof.report.words.Counted;

/** What the page of a comparison says. */
final class ComparisonContents {

  private static final int MAX_IMAGES = 60;
  private static final int MAX_VALUES = 200;
  private static final int MAX_NOTED = 200;

  private final FileFacts first;
  private final FileFacts second;
  private final TransactionComparison comparison;
  private final RenderOptions options;
  private final Optional<Function<ExaminedImage, Optional<GrayImage>>> pixels;
  private final ComparisonPhrases words;
  private final OutcomeWording outcome;
  private final ReportPhrases wording;
  private final Map<Integer, ExaminedImage> firstImages;
  private final Map<Integer, ExaminedImage> secondImages;

  ComparisonContents(
      FileFacts first,
      FileFacts second,
      TransactionComparison comparison,
      RenderOptions options,
      Optional<Function<ExaminedImage, Optional<GrayImage>>> pixels) {
    this.first = first;
    this.second = second;
    this.comparison = comparison;
    this.options = options;
    this.pixels = pixels;
    this.words = new ComparisonPhrases(comparison, options.showPersonal());
    this.outcome = new OutcomeWording(comparison);
    this.wording = new ReportPhrases(comparison.first().tables());
    this.firstImages = comparison.first().imagesByRecord();
    this.secondImages = comparison.second().imagesByRecord();
  }

  ComparisonPage page() {
    List<RecordPair> images =
        comparison.pairs().stream().filter(ComparisonContents::imagesDiffer).toList();
    return new ComparisonPage(
        HtmlHead.titled(
            outcome.stamp()
                + ": "
                + TextSanitizer.of(first.name())
                + " and "
                + TextSanitizer.of(second.name())
                + " \u2013 Ridgeproof",
            "comparison.css"),
        outcome.stamp(),
        outcome.style(),
        outcome.lead(),
        outcome.next(),
        outcome.personDoubt().orElse(List.of()),
        words.summary(),
        words.references(),
        words.ignored(),
        options.showPersonal(),
        pixels.isPresent(),
        files(),
        List.of(
            change("Resolved", "good", comparison.changes().resolved(), comparison.first()),
            change("Still present", "mixed", comparison.changes().present(), comparison.second()),
            change("New", "bad", comparison.changes().added(), comparison.second())),
        comparison.fingers().stream().map(finger -> FingerRow.of(finger, wording)).toList(),
        images.stream().limit(MAX_IMAGES).map(this::image).toList(),
        Math.max(0, images.size() - MAX_IMAGES),
        comparison.pairs().stream().filter(RecordPair::differs).map(this::pair).toList(),
        comparison.removed().stream().map(r -> words.record(r, comparison.first())).toList(),
        comparison.added().stream().map(r -> words.record(r, comparison.second())).toList(),
        noted().filter(noted -> !noted.isLength()).limit(MAX_NOTED).map(this::row).toList(),
        lengths(),
        words.cautions());
  }

  private List<FileRow> files() {
    FindingsReport before = comparison.first();
    FindingsReport after = comparison.second();
    List<FileRow> rows = new ArrayList<>();
    rows.add(
        new FileRow("Name", TextSanitizer.of(first.name()), TextSanitizer.of(second.name()), true));
    rows.add(new FileRow("Verdict", before.verdict().name(), after.verdict().name(), false));
    rows.add(
        new FileRow(
            "Findings", number(before.findings().size()), number(after.findings().size()), false));
    rows.add(
        new FileRow(
            "Records",
            number(before.transaction().records().size()),
            number(after.transaction().records().size()),
            false));
    rows.add(
        new FileRow(
            "Images", number(before.images().size()), number(after.images().size()), false));
    rows.add(
        new FileRow(
            "Size", Counted.of(first.bytes(), "byte"), Counted.of(second.bytes(), "byte"), false));
    rows.add(new FileRow("SHA-256", first.sha256(), second.sha256(), true));
    return rows;
  }

  private static String number(long value) {
    return String.format(Locale.ROOT, "%,d", value);
  }

  private ComparisonPage.Change change(
      String title, String style, List<Finding> findings, FindingsReport report) {
    return new ComparisonPage.Change(
        title, style, findings(FindingChanges.problems(findings), report), outcome.notes(findings));
  }

  private List<FindingLine> findings(List<Finding> findings, FindingsReport report) {
    ObservedText observed = new ObservedText(report, options.showPersonal());
    return findings.stream()
        .map(
            finding ->
                new FindingLine(
                    finding.severity().name(),
                    finding.ruleId(),
                    finding.rule().title(),
                    wording.whereabouts(finding.location()),
                    TruncatedText.of(observed.of(finding))))
        .toList();
  }

  private static boolean imagesDiffer(RecordPair pair) {
    return pair.image().filter(ImageDifference::differs).isPresent();
  }

  private ImagePart image(RecordPair pair) {
    ExaminedImage left = firstImages.get(pair.first().ordinal());
    ExaminedImage right = secondImages.get(pair.second().ordinal());
    ImageLevel level = pair.level().orElseThrow();
    String positions = wording.positions(left);
    String title = positions.isEmpty() ? wording.recordType(left.record().type()) : positions;
    return new ImagePart(
        "i" + pair.first().ordinal(),
        title,
        state(level),
        mark(state(level)),
        ComparisonPhrases.level(pair, level),
        ComparisonPhrases.words(pair.image().orElseThrow()),
        pictures(pair, title, left, right),
        pair.fingers().map(FingerComparison::prints).orElse(List.of()).stream()
            .map(this::print)
            .toList());
  }

  /** The second laid on the first where the matcher can, else both as they are. */
  private List<PicturePair> pictures(
      RecordPair pair, String title, ExaminedImage left, ExaminedImage right) {
    Optional<GrayImage> one = pixels.flatMap(decode -> decode.apply(left));
    Optional<GrayImage> two = pixels.flatMap(decode -> decode.apply(right));
    List<PrintComparison> aligned =
        pair.fingers().map(FingerComparison::prints).orElse(List.of()).stream()
            .filter(print -> print.alignment().isPresent())
            .toList();
    if (one.isPresent() && two.isPresent() && !aligned.isEmpty()) {
      boolean alone = pair.fingers().orElseThrow().prints().size() == 1;
      return aligned.stream()
          .map(
              print ->
                  AlignedPictures.of(
                      words.finger(print),
                      left,
                      one.get(),
                      two.get(),
                      alone,
                      print.alignment().orElseThrow()))
          .toList();
    }
    boolean sameCapture = pair.level().filter(ImageLevel::isSameCapture).isPresent();
    Optional<GrayImage> difference =
        sameCapture
            ? one.flatMap(a -> two.flatMap(b -> DifferencePicture.of(a, b)))
            : Optional.empty();
    return List.of(
        PicturePair.of(
            title,
            left,
            right,
            one.map(Thumbnail::of),
            two.map(Thumbnail::of),
            difference.map(Thumbnail::of)));
  }

  private static String state(ImageLevel level) {
    return switch (level) {
      case SAME_BYTES, SAME_PIXELS, SAME_CAPTURE, SAME_FINGER -> "same";
      case DIFFERENT_FINGER, DIFFERENT_PIXELS -> "other";
      case CANNOT_BE_TOLD -> "untold";
    };
  }

  private static String mark(String state) {
    return switch (state) {
      case "same" -> "=";
      case "other" -> "\u2260";
      default -> "?";
    };
  }

  private PrintRow print(PrintComparison print) {
    String state =
        switch (print.answer()) {
          case SAME_FINGER -> "same";
          case DIFFERENT_FINGER -> "other";
          case CANNOT_BE_TOLD -> "untold";
        };
    return new PrintRow(
        words.finger(print),
        state,
        mark(state),
        ComparisonPhrases.answer(print),
        ComparisonPhrases.similarity(print),
        print.answer() == Answer.SAME_FINGER ? "" : words.reason(print));
  }

  private PairPart pair(RecordPair pair) {
    List<ValueDifference> counted =
        pair.differences().stream().filter(difference -> !difference.ignored()).toList();
    return new PairPart(
        "r" + pair.first().ordinal(),
        words.record(pair.first(), comparison.first()),
        imagesDiffer(pair) ? "i" + pair.first().ordinal() : "",
        words.remarks(pair),
        counted.stream().limit(MAX_VALUES).map(value -> row("", value)).toList(),
        Math.max(0, counted.size() - MAX_VALUES));
  }

  private ValueRow row(String lead, ValueDifference difference) {
    return new ValueRow(
        lead + words.place(difference),
        words.fieldName(difference),
        ComparisonPhrases.kind(difference),
        difference.first().map(text -> words.shown(difference, text)).orElse(""),
        difference.second().map(text -> words.shown(difference, text)).orElse(""));
  }

  private record Noted(RecordPair pair, ValueDifference difference) {

    boolean isLength() {
      return ComparisonPhrases.isLength(difference);
    }
  }

  private Stream<Noted> noted() {
    return comparison.pairs().stream()
        .flatMap(
            pair ->
                pair.differences().stream()
                    .filter(ValueDifference::ignored)
                    .map(difference -> new Noted(pair, difference)));
  }

  private ValueRow row(Noted noted) {
    return row("Record " + noted.pair().first().ordinal() + ", ", noted.difference());
  }

  private String lengths() {
    int lengths = (int) noted().filter(Noted::isLength).count();
    return lengths == 0 ? "" : ComparisonPhrases.lengths(lengths);
  }
}
