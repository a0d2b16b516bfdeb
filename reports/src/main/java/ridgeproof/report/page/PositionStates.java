package ridgeproof.report.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.finding.Finding;
import ridgeproof.report.ReportPhrases;
import ridgeproof.report.page.ReportModel.Link;
import ridgeproof.report.page.ReportModel.PositionRow;
import ridgeproof.report.prints.ConcernedPrints;
import ridgeproof.report.prints.Print;
import ridgeproof.spec.SubmissionProfile.NeededPrint;
import ridgeproof.spec.consistency.MissingFingerField;
import ridgeproof.spec.layout.Code;
import ridgeproof.spec.rule.Severity;
import ridgeproof.transaction.record.LogicalRecord;
import ridgeproof.transaction.record.Subfield;
import ridgeproof.transaction.record.WholeNumber;

/** What the transaction has of each finger position, and of every other position it shows. */
public final class PositionStates {

  private static final int LAST_OF_CARD = 14;
  private static final int THUMBS_TOGETHER = 15;
  private static final Set<Integer> PLAIN_THUMBS = Set.of(11, 12);
  private static final String IMAGED_YET_MISSING = "RP-TXN-005";
  private static final Set<String> OF_PRINTS = Set.of("RDG", "SEQ");

  private final FindingsReport report;
  private final ReportPhrases wording;
  private final Set<Integer> declared = new TreeSet<>();

  /** Findings that make an image doubtful, by ordinal of their record. */
  private final Map<Integer, List<Finding>> grave;

  private final Map<Integer, List<Concern>> concerns;

  public PositionStates(FindingsReport report) {
    this.report = report;
    this.wording = new ReportPhrases(report.tables());
    this.grave = report.concernsByRecord();
    this.concerns = concerns();
    for (MissingFingerField row : report.tables().missingFingerFields()) {
      for (LogicalRecord record : report.transaction().recordsOfType(row.field().recordType())) {
        record
            .field(row.field())
            .ifPresent(
                field -> {
                  for (Subfield subfield : field.subfields()) {
                    WholeNumber.parse(subfield.text(row.fingerItem())).ifPresent(declared::add);
                  }
                });
      }
    }
  }

  /** The positions of a card in order, then others that are imaged or needed. */
  public List<PositionRow> rows() {
    Map<Integer, ExaminedImage> imaged = new HashMap<>();
    for (ExaminedImage image : report.images()) {
      if (image.layout().frictionRidge()) {
        image.positions().forEach(position -> imaged.putIfAbsent(position, image));
      }
    }
    Set<Integer> codes =
        IntStream.rangeClosed(1, LAST_OF_CARD)
            .boxed()
            .collect(Collectors.toCollection(TreeSet::new));
    codes.addAll(imaged.keySet());
    report.profile().ifPresent(profile -> profile.prints().forEach(p -> codes.add(p.position())));
    return codes.stream()
        .map(code -> row(code, imaged))
        .filter(row -> row.code() <= LAST_OF_CARD || row.state() != PositionState.NOT_ASKED)
        .toList();
  }

  private PositionRow row(int code, Map<Integer, ExaminedImage> imaged) {
    ExaminedImage image = imaged.get(code);
    if (image == null && PLAIN_THUMBS.contains(code)) {
      image = imaged.get(THUMBS_TOGETHER);
    }
    if (image == null) {
      return absentRow(code, imaged);
    }
    int record = image.record().ordinal();
    Link link = new Link("i" + record, "record " + record);
    boolean together = !image.positions().contains(code);
    OptionalInt only =
        together && !fingers(code).isEmpty()
            ? OptionalInt.of(fingers(code).get(0))
            : OptionalInt.empty();
    Set<Integer> records = records(image.positions().contains(code) ? code : THUMBS_TOGETHER);
    Optional<Finding> worst = worst(records, only);
    String why = worst.map(finding -> finding.rule().title()).orElse("");
    PositionState state = isAccounted(worst, only) ? PositionState.ACCOUNTED : state(worst);
    return new PositionRow(
        code,
        wording.position(code),
        state,
        state == PositionState.PRESENT && together
            ? "in " + wording.position(THUMBS_TOGETHER)
            : why,
        Optional.of(link),
        together ? List.of() : ofFingers(code, records, link));
  }

  private Set<Integer> records(int code) {
    return report.images().stream()
        .filter(image -> image.layout().frictionRidge() && image.positions().contains(code))
        .map(image -> image.record().ordinal())
        .collect(Collectors.toSet());
  }

  /** The fingers of a slap, in the order of their codes. */
  private List<PositionRow> ofFingers(int code, Set<Integer> records, Link link) {
    List<Integer> fingers = fingers(code);
    if (fingers.size() < 2) {
      return List.of();
    }
    return fingers.stream().map(finger -> ofFinger(finger, records, link)).toList();
  }

  private PositionRow ofFinger(int finger, Set<Integer> records, Link link) {
    OptionalInt only = OptionalInt.of(finger);
    Optional<Finding> worst = worst(records, only);
    return new PositionRow(
        finger,
        inSlap(finger),
        isAccounted(worst, only) ? PositionState.ACCOUNTED : state(worst),
        worst.map(finding -> finding.rule().title()).orElse(""),
        Optional.of(link),
        List.of());
  }

  /**
   * A finger of several in one image that is annotated as missing, and of which nothing is said.
   */
  private boolean isAccounted(Optional<Finding> worst, OptionalInt finger) {
    return worst.isEmpty() && finger.isPresent() && declared.contains(finger.getAsInt());
  }

  private String inSlap(int finger) {
    return wording.position(finger) + " (slap)";
  }

  private PositionRow absentRow(int code, Map<Integer, ExaminedImage> imaged) {
    Optional<Finding> worst =
        grave.getOrDefault(0, List.of()).stream()
            .filter(finding -> finding.location().position().orElse(-1) == code)
            .filter(finding -> finding.severity().worseThan(Severity.ADVICE))
            .min(Comparator.comparing(Finding::severity));
    PositionState state = absent(code, imaged);
    List<PositionRow> each =
        fingers(code).size() < 2
            ? List.of()
            : fingers(code).stream()
                .map(
                    finger ->
                        new PositionRow(
                            finger,
                            inSlap(finger),
                            declared.contains(finger) ? PositionState.ACCOUNTED : state,
                            "",
                            Optional.empty(),
                            List.of()))
                .toList();
    return new PositionRow(
        code,
        wording.position(code),
        state,
        worst.map(finding -> finding.rule().title()).orElse(""),
        Optional.empty(),
        each);
  }

  private static PositionState state(Optional<Finding> worst) {
    return worst
        .map(
            finding ->
                finding.severity().worseThan(Severity.ADVICE)
                    ? PositionState.DOUBTFUL
                    : PositionState.ADVISED)
        .orElse(PositionState.PRESENT);
  }

  private PositionState absent(int code, Map<Integer, ExaminedImage> imaged) {
    List<Integer> fingers = fingers(code);
    if (!fingers.isEmpty() && declared.containsAll(fingers)) {
      return PositionState.ACCOUNTED;
    }
    return report.profile().stream()
            .flatMap(profile -> profile.prints().stream())
            .filter(print -> asksFor(print, code))
            .anyMatch(print -> !imaged.containsKey(print.position()) && !standIn(print, imaged))
        ? PositionState.MISSING
        : PositionState.NOT_ASKED;
  }

  /** Plain thumbs are also asked for as the halves of the thumbs together. */
  private static boolean asksFor(NeededPrint print, int code) {
    return print.position() == code
        || PLAIN_THUMBS.contains(code)
            && print.position() == THUMBS_TOGETHER
            && print.or().contains(code);
  }

  private static boolean standIn(NeededPrint print, Map<Integer, ExaminedImage> imaged) {
    return !print.or().isEmpty() && imaged.keySet().containsAll(print.or());
  }

  /**
   * The worst that is said of images of one position: a retake may be kept beside the first.
   *
   * @param finger only of this finger of it, and of all together
   */
  private Optional<Finding> worst(Set<Integer> records, OptionalInt finger) {
    return records.stream()
        .flatMap(record -> concerns.getOrDefault(record, List.of()).stream())
        .filter(concern -> concern.isAbout(finger))
        .map(Concern::finding)
        .min(Comparator.comparing(Finding::severity));
  }

  /**
   * What is said of an image.
   *
   * @param finger the only finger of it that is meant
   */
  private record Concern(Finding finding, OptionalInt finger) {

    public boolean isAbout(OptionalInt other) {
      return finger.isEmpty() || other.isEmpty() || finger.equals(other);
    }
  }

  /** What the list of steps says of each image and of the prints that they are compared with. */
  private Map<Integer, List<Concern>> concerns() {
    Map<Integer, List<Concern>> concerned = new HashMap<>();
    ConcernedPrints prints = new ConcernedPrints(report);
    for (Finding finding : report.findings()) {
      if (finding.severity().worseThan(Severity.NOTE) && isOfPrint(finding)) {
        for (Print print : prints.of(finding)) {
          concerned
              .computeIfAbsent(print.record(), key -> new ArrayList<>())
              .add(new Concern(finding, print.code()));
        }
      }
    }
    grave.forEach(
        (record, findings) ->
            findings.stream()
                .filter(finding -> finding.severity().worseThan(Severity.ADVICE))
                .filter(finding -> !isOfPrint(finding) || finding.location().record().isEmpty())
                .forEach(
                    finding ->
                        concerned
                            .computeIfAbsent(record, key -> new ArrayList<>())
                            .add(new Concern(finding, OptionalInt.empty()))));
    return concerned;
  }

  /** Whether it is about what is seen of a print, and not about a field of its record. */
  private static boolean isOfPrint(Finding finding) {
    return OF_PRINTS.contains(finding.rule().area()) || finding.ruleId().equals(IMAGED_YET_MISSING);
  }

  private List<Integer> fingers(int code) {
    return report
        .tables()
        .codes("finger-positions")
        .find(Integer.toString(code))
        .map((Code found) -> found.property("fingers"))
        .stream()
        .flatMap(text -> List.of(text.split(" ")).stream())
        .map(WholeNumber::parse)
        .filter(number -> number.isPresent())
        .map(number -> number.getAsInt())
        .toList();
  }
}
