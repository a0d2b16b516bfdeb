package ridgeproof.api;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.finding.Finding;
import ridgeproof.finding.Location;
import ridgeproof.report.ObservedText;
import ridgeproof.report.ReportPhrases;
import ridgeproof.transaction.record.ByteRange;

/** Findings as other programs see them, which stay as they are when the classes behind change. */
final class FindingConversion {

  private final ReportPhrases phrases;
  private final ObservedText observed;
  private final Map<Integer, ExaminedImage> images;

  FindingConversion(FindingsReport report, boolean personalShown) {
    this.phrases = new ReportPhrases(report.tables());
    this.observed = new ObservedText(report, personalShown);
    this.images = report.imagesByRecord();
  }

  ReportedFinding of(Finding finding) {
    return new ReportedFinding(
        finding.ruleId(),
        FindingSeverity.valueOf(finding.severity().name()),
        finding.rule().title(),
        place(finding.location()),
        finger(finding.location()),
        observed.of(finding),
        finding.required(),
        finding.explanation(),
        finding.remedy(),
        finding.count());
  }

  /** The finger that the finding is about, or whose print its record holds. */
  private Optional<PrintPosition> finger(Location location) {
    OptionalInt position =
        location.position().isEmpty() && location.record().isPresent()
            ? Optional.ofNullable(images.get(location.record().getAsInt()))
                .map(ExaminedImage::position)
                .orElse(OptionalInt.empty())
            : location.position();
    return position.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new PrintPosition(position.getAsInt(), phrases.position(position.getAsInt())));
  }

  private FindingPlace place(Location location) {
    Optional<ByteRange> bytes = location.bytes();
    return new FindingPlace(
        location.record(),
        location.recordType(),
        location.idc(),
        location.field().map(Object::toString),
        location.subfield(),
        location.item(),
        bytes.map(range -> OptionalInt.of(range.offset())).orElse(OptionalInt.empty()),
        bytes.map(range -> OptionalInt.of(range.length())).orElse(OptionalInt.empty()),
        phrases.whereabouts(location));
  }
}
