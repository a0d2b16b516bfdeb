package ridgeproof.report.comparison;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import ridgeproof.examination.Verdict;
import ridgeproof.examination.comparison.FindingChanges;
import ridgeproof.examination.comparison.FingerChange;
import ridgeproof.examination.comparison.PersonDoubt;
import ridgeproof.examination.comparison.TransactionComparison;
import ridgeproof.finding.Finding;
import ridgeproof.report.FieldValues;
import ridgeproof.report.ReportPhrases;
import ridgeproof.report.words.Counted;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.layout.FieldRow;

/** The answer to the first question about two files: is the problem solved? */
final class OutcomeWording {

  private final TransactionComparison comparison;
  private final FieldValues values;

  OutcomeWording(TransactionComparison comparison) {
    this.comparison = comparison;
    this.values =
        new FieldValues(
            comparison.first().tables(), comparison.first().transaction().version(), false);
  }

  /** One or two words in capitals. */
  String stamp() {
    return comparison.outcome().name().replace('_', ' ');
  }

  /** {@code good}, {@code bad}, {@code mixed} or {@code neutral}. */
  String style() {
    return switch (comparison.outcome()) {
      case SAME, RESOLVED -> "good";
      case BETTER, STILL_PRESENT -> "mixed";
      case WORSE -> "bad";
      case DIFFERENT -> "neutral";
    };
  }

  /** What it comes to, in one sentence. */
  String lead() {
    if (comparison.sameBytes()) {
      return "The files are identical.";
    }
    int resolved = FindingChanges.problems(comparison.changes().resolved()).size();
    int present = FindingChanges.problems(comparison.changes().present()).size();
    int added = FindingChanges.problems(comparison.changes().added()).size();
    String counts =
        resolved + present + added == 0
            ? "no problem was found in either."
            : resolved + " resolved, " + present + " still present, " + added + " new.";
    String verdicts = verdicts();
    return comparison.same()
        ? "The files have the same contents. " + verdicts + ": " + counts
        : verdicts + ": " + counts;
  }

  private String verdicts() {
    Verdict before = comparison.first().verdict();
    Verdict after = comparison.second().verdict();
    return before == after ? before + " in both files" : before + " became " + after;
  }

  /** What to do with the second file. */
  String next() {
    return "Second file: " + ReportPhrases.of(comparison.second().verdict()) + lacking();
  }

  /** A problem is not resolved by leaving out the print that has it. */
  private String lacking() {
    long removed =
        comparison.fingers().stream()
            .filter(finger -> finger.trend() == FingerChange.Trend.REMOVED)
            .count();
    return removed == 0
        ? ""
        : " It lacks "
            + Counted.of(removed, "print")
            + " of the first file, whose findings are listed as resolved.";
  }

  /** How many facts are resolved, still present or new that ask for nothing; empty for none. */
  String notes(List<Finding> findings) {
    int notes = findings.size() - FindingChanges.problems(findings).size();
    return notes == 0 ? "" : Counted.of(notes, "note");
  }

  /** Prints and biographic data that do not go together, and what to do about it. */
  Optional<List<String>> personDoubt() {
    return comparison.personDoubt().map(this::sentences);
  }

  private List<String> sentences(PersonDoubt doubt) {
    List<String> lines = new ArrayList<>();
    String prints = Counted.of(doubt.fingers(), "print");
    String fields = fields(doubt.changed());
    switch (doubt.kind()) {
      case SAME_PRINTS_OTHER_DATA -> {
        lines.add("Same prints, different biographic data: " + fields + ".");
        lines.add(
            prints
                + (doubt.fingers() == 1 ? " is" : " are")
                + " of the same finger in both files.");
        lines.add(
            "If the change is a correction, no action is needed. Otherwise one file holds the"
                + " biographic data of another person: compare both with the subject's documents.");
      }
      case OTHER_PRINTS_SAME_DATA -> {
        lines.add("Same biographic data, different prints.");
        lines.add("None of the " + prints + " compared match, so they may be another person's.");
        lines.add("Check who was captured before you send either file.");
      }
      case OTHER_PRINTS_OTHER_DATA -> {
        lines.add("The files may be of two people.");
        lines.add("None of the " + prints + " compared match, and these differ: " + fields + ".");
        lines.add("Check that you are comparing the right files.");
      }
    }
    return lines;
  }

  private String fields(List<FieldNumber> fields) {
    return fields.stream()
        .map(
            field ->
                values.row(field).map(FieldRow::name).map(name -> name + " ").orElse("")
                    + "("
                    + field
                    + ")")
        .collect(Collectors.joining(", "));
  }
}
