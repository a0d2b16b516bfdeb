package ridgeproof.report.page;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.RecommendedAction;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.finding.Finding;
import ridgeproof.finding.Location;
import ridgeproof.imagery.GrayImage;
import ridgeproof.report.FileFacts;
import ridgeproof.report.ObservedText;
import ridgeproof.report.RenderOptions;
import ridgeproof.report.ReportPhrases;
import ridgeproof.report.RidgePhrases;
import ridgeproof.report.TextSanitizer;
import ridgeproof.report.catalogue.RuleListing;
import ridgeproof.report.page.ReportModel.Fact;
import ridgeproof.report.page.ReportModel.FindingNote;
import ridgeproof.report.page.ReportModel.Link;
import ridgeproof.report.page.ReportModel.PositionRow;
import ridgeproof.report.page.ReportModel.RuleNote;
import ridgeproof.report.page.ReportModel.Step;
import ridgeproof.report.page.ReportModel.StepPicture;
import ridgeproof.report.picture.Picture;
import ridgeproof.report.picture.PrintMeasures;
import ridgeproof.report.picture.Thumbnail;
import ridgeproof.report.prints.PrintPictures;
import ridgeproof.report.prints.PrintScores;
import ridgeproof.report.words.Counted;
import ridgeproof.spec.rule.Severity;
import ridgeproof.spec.table.Source;

/** What the HTML report says. */
public final class ReportModelBuilder {

  private static final int MAX_LINKS = 14;

  /** Pixels of a print beside a step: sharp enough to be enlarged. */
  private static final int LONGER_SIDE = 760;

  private final FileFacts file;
  private final FindingsReport report;
  private final RenderOptions options;
  private final Optional<Function<ExaminedImage, Optional<GrayImage>>> pixels;
  private final ReportPhrases wording;
  private final FindingNotes notes;
  private final Map<Integer, List<Finding>> findings;
  private final Map<Integer, List<Finding>> concerns;
  private final PrintPictures prints;
  private final PrintScores scores;
  private final ObservedText observed;

  public ReportModelBuilder(
      FileFacts file,
      FindingsReport report,
      RenderOptions options,
      Optional<Function<ExaminedImage, Optional<GrayImage>>> pixels) {
    this.file = file;
    this.report = report;
    this.options = options;
    this.pixels = pixels;
    this.wording = new ReportPhrases(report.tables());
    this.findings = report.findingsByRecord();
    this.concerns = report.concernsByRecord();
    this.prints = new PrintPictures(report, pixels);
    this.scores = new PrintScores(report);
    this.observed = new ObservedText(report, options.showPersonal());
    this.notes = new FindingNotes(report, options.showPersonal());
  }

  public ReportModel page() {
    List<PositionRow> positions = new PositionStates(report).rows();
    boolean prints = report.images().stream().anyMatch(image -> image.layout().frictionRidge());
    boolean asked = report.profile().isPresent();
    List<FindingNote> wholeFile =
        findings.getOrDefault(0, List.of()).stream().map(notes::note).toList();
    return new ReportModel(
        HtmlHead.titled(
            report.verdict() + ": " + TextSanitizer.of(file.name()) + " \u2013 Ridgeproof"),
        TextSanitizer.of(file.name()),
        report.verdict().name(),
        ReportPhrases.of(report.verdict()),
        ReportPhrases.counts(report),
        options.showPersonal(),
        facts(),
        report.relaxed().stream().map(wording::relaxed).map(TextSanitizer::of).toList(),
        report.actions().stream().map(this::step).toList(),
        prints || asked ? HandDiagram.of(positions) : List.of(),
        prints || asked ? positions : List.of(),
        report.sequence().map(new RidgePhrases(wording)::sequence).orElse(""),
        pixels.isPresent(),
        report.images().stream().map(this::picture).toList(),
        wholeFile,
        new RecordParts(report, options.showPersonal(), notes).parts(),
        rules(),
        documents(),
        ReportPhrases.CAUTIONS,
        options.everyFinding());
  }

  private List<Fact> facts() {
    List<Fact> facts = new ArrayList<>();
    facts.add(new Fact("Size", Counted.of(file.bytes(), "byte"), false));
    if (!report.transaction().records().isEmpty()) {
      facts.add(new Fact("Version", ReportPhrases.version(report), false));
      report
          .transaction()
          .typeOfTransaction()
          .ifPresent(
              type -> facts.add(new Fact("Type of transaction", TextSanitizer.of(type), true)));
      facts.add(
          new Fact(
              "Contents",
              Counted.of(report.transaction().records().size(), "record")
                  + ", "
                  + Counted.of(report.images().size(), "image"),
              false));
      facts.add(new Fact("Checked as", TextSanitizer.of(ReportPhrases.heldTo(report)), false));
      ReportPhrases.completeness(report)
          .ifPresent(how -> facts.add(new Fact("Completeness", TextSanitizer.of(how), false)));
    }
    facts.add(
        new Fact(
            "Depth",
            switch (report.depth()) {
              case STRUCTURE -> "structure; images were not checked";
              case IMAGES -> "structure and images; ridges were not checked";
              case RIDGES -> "structure, images, and ridges";
            },
            false));
    facts.add(new Fact("Dates checked as of", report.asOf().toString(), false));
    facts.add(new Fact("SHA-256", file.sha256(), true));
    return facts;
  }

  private Step step(RecommendedAction action) {
    List<Finding> answered = action.findings();
    return new Step(
        action.severity().name(),
        TextSanitizer.of(action.remedy()) + observed.aboutMasked(action),
        ReportPhrases.ids(answered),
        links(answered),
        Math.max(0, answered.size() - MAX_LINKS),
        prints.of(answered).stream()
            .map(
                print ->
                    new StepPicture(
                        print,
                        "i" + print.record(),
                        print.pixels().map(pixels -> Thumbnail.of(pixels, LONGER_SIDE))))
            .toList());
  }

  /** A link to each place; those that would read alike are told apart. */
  private List<Link> links(List<Finding> answered) {
    List<Finding> linked = answered.stream().limit(MAX_LINKS).toList();
    boolean oneRecord =
        linked.stream().map(finding -> finding.location().record()).distinct().count() == 1;
    Map<String, Integer> told = new HashMap<>();
    List<Link> links = new ArrayList<>();
    for (Finding finding : linked) {
      Location place = finding.location();
      boolean vague = place.position().isEmpty() && place.field().isPresent() && !oneRecord;
      String record =
          vague && place.record().isPresent() ? " in record " + place.record().getAsInt() : "";
      String text = wording.briefly(place) + record;
      int times = told.merge(text, 1, Integer::sum);
      links.add(new Link(notes.anchor(finding), times == 1 ? text : text + " (" + times + ")"));
    }
    return links;
  }

  private Picture picture(ExaminedImage image) {
    String positions = wording.positions(image);
    String impression = wording.impression(image.impression());
    String title =
        positions.isEmpty()
            ? wording.recordType(image.record().type())
            : positions + (impression.isEmpty() ? "" : ", " + impression);
    Optional<Severity> worst = worst(image);
    return Picture.of(
            image,
            title,
            TextSanitizer.of(wording.measures(image)),
            worst.map(severity -> state(image, severity)).orElse(""),
            worst.map(severity -> severity.name().toLowerCase(Locale.ROOT)).orElse(""),
            pixels.flatMap(decode -> decode.apply(image)).map(Thumbnail::of))
        .withPrints(
            image
                .ridges()
                .map(facts -> PrintMeasures.of(image, report, scores, wording))
                .orElse(List.of()));
  }

  /** The worst severity among the findings of the image's record, but for mere facts. */
  private Optional<Severity> worst(ExaminedImage image) {
    return concerns.getOrDefault(image.record().ordinal(), List.of()).stream()
        .map(Finding::severity)
        .filter(severity -> severity.worseThan(Severity.NOTE))
        .min(Severity::compareTo);
  }

  private String state(ExaminedImage image, Severity worst) {
    return concerns.getOrDefault(image.record().ordinal(), List.of()).stream()
        .filter(finding -> finding.severity() == worst)
        .map(finding -> finding.rule().title())
        .distinct()
        .collect(Collectors.joining("; ", worst + ": ", ""));
  }

  private List<RuleNote> rules() {
    return report.findings().stream()
        .map(Finding::rule)
        .distinct()
        .sorted((left, right) -> left.id().compareTo(right.id()))
        .map(
            rule ->
                new RuleNote(
                    rule.id(),
                    rule.severity().name(),
                    rule.title(),
                    RuleListing.spoken(rule.explanation()),
                    RuleListing.spoken(rule.remedy()),
                    source(rule.source())))
        .toList();
  }

  private static String source(Source source) {
    return source.document()
        + (source.place().isEmpty() ? "" : ", " + source.place())
        + " ("
        + source.known().label()
        + ")";
  }

  private List<Fact> documents() {
    return report.findings().stream()
        .map(finding -> finding.source().document())
        .distinct()
        .sorted()
        .map(key -> new Fact(key, wording.title(key), false))
        .toList();
  }
}
