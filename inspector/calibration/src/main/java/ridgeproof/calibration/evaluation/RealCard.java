package ridgeproof.calibration.evaluation;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import ridgeproof.calibration.evaluation.SequenceTrial.Exchange;
import ridgeproof.calibration.evaluation.SequenceTrial.Outcome;
import ridgeproof.calibration.print.Markdown;
import ridgeproof.examination.Examiner;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.examination.facts.ImageExtraction;
import ridgeproof.examination.facts.SecondSight;
import ridgeproof.examination.facts.SequenceComparison;
import ridgeproof.examination.rules.ridges.MatchLimits;
import ridgeproof.imagery.DecodingLimits;
import ridgeproof.ridges.matching.FingerMatchResult;
import ridgeproof.ridges.matching.SequenceLimits;
import ridgeproof.ridges.matching.SequenceResult;
import ridgeproof.ridges.segmentation.Segment;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.FingerPosition;
import ridgeproof.transaction.reader.ParseLimits;
import ridgeproof.transaction.record.ByteSource;

/** The card of a real person: where its plain fingers were found, and what exchanges come to. */
public final class RealCard {

  private static final FingerPosition[] FINGERS = FingerPosition.values();

  private final FindingsReport report;
  private final SequenceComparison sequence;
  private final List<String> lines = new ArrayList<>();

  private RealCard(FindingsReport report) {
    this.report = report;
    this.sequence = report.sequence().orElseThrow();
  }

  public static RealCard examined(Path file) throws IOException {
    return new RealCard(
        new Examiner(SpecTables.open(), ParseLimits.standard())
            .examine(ByteSource.of(Files.readAllBytes(file)), ExaminationOptions.standard()));
  }

  /** Numbers only, as Markdown. */
  String write() {
    lines.clear();
    line("## The public card of a real person");
    line("");
    line("### Plain fingers found");
    line("");
    line("In pixels of each image at 500 ppi; `ridgeproof images --overlay` draws them.");
    line("");
    line(
        "| image | finger | middle across | middle down | width | height | leans, degrees | confidence | doubts |");
    line("|---:|---:|---:|---:|---:|---:|---:|---:|---|");
    slaps().forEach((image, segments) -> segments.forEach(segment -> row(image, segment)));
    line("");
    answers();
    exchanges();
    return String.join("\n", lines) + "\n";
  }

  private Map<Integer, List<Segment>> slaps() {
    return report.images().stream()
        .filter(image -> image.ridges().flatMap(facts -> facts.slap()).isPresent())
        .collect(
            Collectors.toMap(
                image -> image.position().orElseThrow(),
                image -> image.ridges().orElseThrow().slap().orElseThrow().segments(),
                (one, other) -> one,
                TreeMap::new));
  }

  private void row(int image, Segment segment) {
    String doubts =
        segment.doubts().stream().map(Markdown::words).collect(Collectors.joining(", "));
    String place =
        segment
            .box()
            .map(
                box ->
                    String.format(
                        Locale.ROOT,
                        "%.0f | %.0f | %.0f | %.0f | %.0f",
                        box.centreX(),
                        box.centreY(),
                        box.width(),
                        box.height(),
                        box.degrees()))
            .orElse("not found | | | |");
    line(
        String.format(
            Locale.ROOT,
            "| %d | %d | %s | %.2f | %s |",
            image,
            segment.position().code(),
            place,
            segment.confidence(),
            doubts));
  }

  private void answers() {
    line("### Each plain print against the rolls");
    line("");
    line("| finger | answer | because | similarity with its roll | with the likest other |");
    line("|---:|---|---|---:|---:|");
    for (FingerMatchResult answer : sequence.answers().answers()) {
      line(
          String.format(
              Locale.ROOT,
              "| %d | %s | %s | %.0f | %.0f |",
              answer.position().code(),
              Markdown.words(answer.verdict()),
              Markdown.words(answer.reason()),
              answer.ownScore(),
              answer.otherScore()));
    }
    line("");
  }

  private void exchanges() {
    SpecTables tables = SpecTables.open();
    SequenceTrial.Prints prints =
        new SequenceTrial.Prints(
            SequenceComparison.minutiae(sequence.rolls()),
            SequenceComparison.minutiae(sequence.plains()),
            Set.of(),
            new SecondSight(new ImageExtraction(tables, DecodingLimits.standard()))
                .of(sequence.rolls(), sequence.plains()));
    SequenceLimits limits = MatchLimits.usual(tables);
    List<Exchange> all = new ArrayList<>();
    List<String> unnamed = new ArrayList<>();
    for (int a = 0; a < FINGERS.length; a++) {
      for (int b = a + 1; b < FINGERS.length; b++) {
        SequenceResult said = SequenceTrial.exchanged(FINGERS[a], FINGERS[b], prints, limits);
        Exchange exchange = Exchange.judged(FINGERS[a], FINGERS[b], said);
        all.add(exchange);
        if (exchange.outcome() != Outcome.NAMED) {
          unnamed.add(why(exchange, said));
        }
      }
    }
    line("### Any two rolls exchanged");
    line("");
    line(String.format(Locale.ROOT, "%d pairs: %s.", all.size(), counts(all)));
    line("");
    unnamed.forEach(this::line);
    if (!unnamed.isEmpty()) {
      line("");
    }
  }

  private static String counts(List<Exchange> all) {
    return all.stream()
        .collect(Collectors.groupingBy(Exchange::outcome, TreeMap::new, Collectors.counting()))
        .entrySet()
        .stream()
        .map(entry -> entry.getValue() + " " + SequenceSection.words(entry.getKey()))
        .collect(Collectors.joining(", "));
  }

  private static String why(Exchange exchange, SequenceResult said) {
    return said.answers().stream()
        .filter(
            answer ->
                answer.position() == exchange.first() || answer.position() == exchange.second())
        .map(
            answer ->
                String.format(
                    Locale.ROOT,
                    "finger %d %s (%s, likest roll %.0f)",
                    answer.position().code(),
                    Markdown.words(answer.verdict()),
                    Markdown.words(answer.reason()),
                    Math.max(answer.ownScore(), answer.otherScore())))
        .collect(
            Collectors.joining(
                "; ",
                String.format(
                    Locale.ROOT,
                    "- %d and %d, %s: ",
                    exchange.first().code(),
                    exchange.second().code(),
                    SequenceSection.words(exchange.outcome())),
                ""));
  }

  private void line(String text) {
    lines.add(text);
  }
}
