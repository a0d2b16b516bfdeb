package ridgeproof.examination.rules.transaction;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.rules.Rule;
import ridgeproof.examination.submission.TransactionKind;
import ridgeproof.finding.FindingLog;
import ridgeproof.finding.Location;
import ridgeproof.finding.Observed;
import ridgeproof.spec.layout.Code;
import ridgeproof.spec.submission.RecordLimit;
import ridgeproof.transaction.record.LogicalRecord;

/** A file holds as many records of each type as its type of transaction has. */
final class RecordLimitsRule implements Rule {

  private static final String TOO_MANY = "RP-TXN-048";
  private static final String NOT_LISTED = "RP-TXN-049";
  private static final String TOO_FEW = "RP-TXN-050";

  /** Header and text, which every type of transaction has. */
  private static final Set<Integer> ALWAYS = Set.of(1, 2);

  @Override
  public Set<String> ids() {
    return Set.of(TOO_MANY, NOT_LISTED, TOO_FEW);
  }

  @Override
  public void check(ExaminationInput examinee, FindingLog log) {
    TransactionKind kind = new TransactionKind(examinee.transaction(), examinee.tables());
    Optional<Code> type = kind.listed();
    List<RecordLimit> limits =
        type.map(code -> examinee.tables().submissions().recordLimits(code.code()))
            .orElse(List.of());
    if (limits.isEmpty() || kind.isPlaceholder()) {
      return;
    }
    limits.forEach(limit -> checkCount(examinee, limit, type.get().code(), log));
    checkUnlisted(examinee, limits, type.get().code(), log);
  }

  private static void checkCount(
      ExaminationInput examinee, RecordLimit limit, String type, FindingLog log) {
    List<LogicalRecord> records = examinee.transaction().recordsOfType(limit.recordType());
    int count = records.size();
    if (count < limit.least()) {
      // That there is no text record is said by the rule for its fields.
      if (!ALWAYS.contains(limit.recordType())) {
        report(TOO_FEW, Location.file(), limit, count, "at least " + limit.least(), type, log);
      }
    } else if (limit.most().isPresent() && count > limit.most().getAsInt()) {
      LogicalRecord first = records.get(limit.most().getAsInt());
      String most = "at most " + limit.most().getAsInt();
      report(TOO_MANY, Location.of(first), limit, count, most, type, log);
    }
  }

  private static void report(
      String rule,
      Location place,
      RecordLimit limit,
      int count,
      String required,
      String type,
      FindingLog log) {
    log.add(
        rule,
        place,
        Observed.of(String.format(Locale.ROOT, "%d Type-%d records", count, limit.recordType())),
        String.format(Locale.ROOT, "%s in %s", required, type),
        Optional.of(limit.source()),
        List.of());
  }

  private static void checkUnlisted(
      ExaminationInput examinee, List<RecordLimit> limits, String type, FindingLog log) {
    Set<Integer> unlisted =
        examinee.transaction().records().stream()
            .map(LogicalRecord::type)
            .collect(Collectors.toCollection(TreeSet::new));
    unlisted.removeAll(ALWAYS);
    limits.forEach(limit -> unlisted.remove(limit.recordType()));
    for (int recordType : unlisted) {
      log.add(
          NOT_LISTED,
          Location.of(examinee.transaction().recordsOfType(recordType).get(0)),
          Observed.of("Type-" + recordType),
          String.format(
              Locale.ROOT,
              "in %s: %s",
              type,
              limits.stream()
                  .filter(limit -> !ALWAYS.contains(limit.recordType()))
                  .map(limit -> "Type-" + limit.recordType())
                  .collect(Collectors.joining(", "))));
    }
  }
}
