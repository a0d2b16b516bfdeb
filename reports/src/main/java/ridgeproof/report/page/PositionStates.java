package ridgeproof.report.page;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.finding.Finding;
import ridgeproof.report.Wording;
import ridgeproof.report.page.Page.Link;
import ridgeproof.report.page.Page.PositionRow;
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

  private final FindingsReport report;
  private final Wording wording;
  private final Set<Integer> declared = new TreeSet<>();

  /** Findings that make an image doubtful, by ordinal of their record. */
  private final Map<Integer, List<Finding>> grave;

  public PositionStates(FindingsReport report) {
    this.report = report;
    this.wording = new Wording(report.tables());
    this.grave = report.concernsByRecord();
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
    Optional<Finding> worst = worst(code, Optional.ofNullable(image));
    Optional<Link> link =
        Optional.ofNullable(image)
            .map(i -> new Link("i" + i.record().ordinal(), "record " + i.record().ordinal()));
    String why = worst.map(finding -> finding.rule().title()).orElse("");
    if (image != null) {
      boolean together = !image.positions().contains(code);
      String note = why.isEmpty() && together ? "in " + wording.position(THUMBS_TOGETHER) : why;
      PositionState state = worst.isPresent() ? PositionState.DOUBTFUL : PositionState.PRESENT;
      return new PositionRow(code, wording.position(code), state, note, link);
    }
    return new PositionRow(code, wording.position(code), absent(code, imaged), why, link);
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

  /** The worst finding that makes the position's image doubtful. */
  private Optional<Finding> worst(int code, Optional<ExaminedImage> image) {
    return Stream.concat(
            grave.getOrDefault(0, List.of()).stream()
                .filter(finding -> finding.location().position().orElse(-1) == code),
            image.stream()
                .flatMap(i -> grave.getOrDefault(i.record().ordinal(), List.of()).stream()))
        .filter(finding -> finding.severity().worseThan(Severity.ADVICE))
        .min((left, right) -> left.severity().compareTo(right.severity()));
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
