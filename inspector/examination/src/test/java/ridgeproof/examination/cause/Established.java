package ridgeproof.examination.cause;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ridgeproof.examination.SampleCard;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.finding.Finding;
import ridgeproof.finding.FindingLog;
import ridgeproof.finding.Location;
import ridgeproof.finding.Observed;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.transaction.Transaction;

/** What a rule of causes makes of findings that a test names. */
public final class Established {

  private Established() {}

  /** A line for each cause: its rule and place, and what it explains of the findings. */
  public static List<String> by(CauseRule rule, Finding... found) {
    return by(rule, SampleCard.rolledTagged().examine().transaction(), found);
  }

  public static List<String> by(CauseRule rule, Transaction transaction, Finding... found) {
    CauseLog log = new CauseLog(SampleCard.TABLES);
    rule.establish(examinee(transaction), List.of(found), log);
    return log.causes().stream().map(cause -> line(cause, List.of(found))).toList();
  }

  /** The transaction as rules of causes are given it, of which no image was opened. */
  public static ExaminationInput examinee(Transaction transaction) {
    return new ExaminationInput(
        transaction,
        SampleCard.TABLES,
        Depth.STRUCTURE,
        List.of(),
        Optional.empty(),
        false,
        ExaminationOptions.standard().withToday(SampleCard.TODAY),
        Optional.empty());
  }

  private static String line(Cause cause, List<Finding> found) {
    List<String> explained =
        found.stream().filter(cause.consequences()::include).map(Established::name).toList();
    return name(cause.finding())
        + (explained.isEmpty() ? ": nothing" : ": " + String.join(", ", explained));
  }

  private static String name(Finding finding) {
    List<String> words = new ArrayList<>(List.of(finding.ruleId()));
    finding.location().record().ifPresent(record -> words.add("record " + record));
    finding.location().field().ifPresent(field -> words.add(field.toString()));
    finding.location().position().ifPresent(finger -> words.add("finger " + finger));
    return String.join(" ", words);
  }

  public static Finding finding(String rule, Location place) {
    FindingLog log = new FindingLog(SampleCard.TABLES, 1);
    log.add(rule, place, Observed.of("observed"), "required");
    return log.findings().get(0);
  }

  public static Finding finding(String rule) {
    return finding(rule, Location.file());
  }

  /** In the Type-14 record of that ordinal. */
  public static Finding inImage(String rule, int record) {
    return finding(rule, Location.inRecord(record, 14));
  }

  public static Finding inField(String rule, int record, int type, int field) {
    return finding(rule, Location.inRecord(record, type).in(new FieldNumber(type, field)));
  }
}
