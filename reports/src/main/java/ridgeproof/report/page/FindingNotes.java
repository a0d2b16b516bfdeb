package ridgeproof.report.page;

import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import ridgeproof.examination.FindingsReport;
import ridgeproof.finding.Finding;
import ridgeproof.report.ObservedText;
import ridgeproof.report.ReportPhrases;
import ridgeproof.report.TextSanitizer;
import ridgeproof.report.TruncatedText;
import ridgeproof.report.page.ReportModel.FindingNote;

/** Findings as notes of the page, each with a place to link to. */
final class FindingNotes {

  private final Map<Finding, Integer> numbers = new IdentityHashMap<>();
  private final Set<String> explained = new HashSet<>();
  private final ReportPhrases wording;
  private final ObservedText observed;

  FindingNotes(FindingsReport report, boolean showPersonal) {
    this.wording = new ReportPhrases(report.tables());
    this.observed = new ObservedText(report, showPersonal);
    report.findings().forEach(finding -> numbers.put(finding, numbers.size() + 1));
  }

  String anchor(Finding finding) {
    return "f" + numbers.get(finding);
  }

  /** The note; a card repeats the same finding up to fourteen times, and the first says why. */
  FindingNote note(Finding finding) {
    boolean first = explained.add(finding.ruleId() + finding.explanation());
    return new FindingNote(
        anchor(finding),
        finding.severity().name(),
        finding.ruleId(),
        finding.rule().title(),
        wording.placeWithFinger(finding.location()),
        finding.count() > 1 ? wording.places(finding) : "",
        ReportPhrases.explains(finding).orElse(""),
        TruncatedText.of(observed.of(finding)),
        TruncatedText.of(TextSanitizer.of(finding.required())),
        ReportPhrases.measured(finding),
        first ? Optional.of(TextSanitizer.of(finding.explanation())) : Optional.empty(),
        "");
  }
}
