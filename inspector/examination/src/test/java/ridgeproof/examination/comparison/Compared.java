package ridgeproof.examination.comparison;

import java.util.List;
import java.util.Locale;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.SampleCard;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.examination.facts.ImageExtraction;
import ridgeproof.finding.Finding;
import ridgeproof.imagery.DecodingLimits;
import ridgeproof.transaction.record.LogicalRecord;

/** Two sample cards beside each other, in lines that tests can state whole. */
final class Compared {

  private Compared() {}

  static TransactionComparison cards(SampleCard first, SampleCard second) {
    return cards(first, second, Depth.STRUCTURE);
  }

  static TransactionComparison cards(SampleCard first, SampleCard second, Depth depth) {
    return reports(report(first, depth), report(second, depth));
  }

  static TransactionComparison reports(FindingsReport first, FindingsReport second) {
    return TransactionComparison.of(
        first,
        second,
        new ImageExtraction(SampleCard.TABLES, DecodingLimits.standard()),
        IgnoredFields.parse(IgnoredFields.STANDARD));
  }

  static FindingsReport report(SampleCard card, Depth depth) {
    return SampleCard.examine(
        card.bytes(), ExaminationOptions.standard().withToday(SampleCard.TODAY).withDepth(depth));
  }

  /** Differences that count, as {@code number subfield.item: first -> second (items)}. */
  static List<String> differences(TransactionComparison comparison) {
    return comparison.pairs().stream()
        .flatMap(pair -> pair.differences().stream())
        .filter(difference -> !difference.ignored())
        .map(
            d ->
                String.format(
                    Locale.ROOT,
                    "%s %d.%d: %s -> %s (%d)",
                    d.field(),
                    d.subfield().orElse(0),
                    d.item().orElse(0),
                    d.first().orElse("-"),
                    d.second().orElse("-"),
                    d.items()))
        .toList();
  }

  static List<Integer> ordinals(List<LogicalRecord> records) {
    return records.stream().map(LogicalRecord::ordinal).toList();
  }

  /** Each pair that does not stand at one place in both, as {@code first=second}. */
  static List<String> elsewhere(TransactionComparison comparison) {
    return comparison.pairs().stream()
        .filter(pair -> pair.first().ordinal() != pair.second().ordinal())
        .map(pair -> pair.first().ordinal() + "=" + pair.second().ordinal())
        .toList();
  }

  static List<String> findings(List<Finding> findings) {
    return findings.stream()
        .map(
            f ->
                f.ruleId()
                    + f.location().field().map(field -> " " + field).orElse("")
                    + (f.location().position().isPresent()
                        ? " finger " + f.location().position().getAsInt()
                        : ""))
        .toList();
  }
}
