package ridgeproof.examination;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ridgeproof.finding.Finding;
import ridgeproof.finding.FindingLog;
import ridgeproof.finding.Location;
import ridgeproof.finding.Observed;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.transaction.record.LogicalRecord;

/**
 * The control numbers of all files of a run, each of which an agency gives once: the second file
 * with a number is told apart from the first by no receiver.
 */
public final class ControlNumbers {

  private static final FieldNumber ORIGINATOR = new FieldNumber(1, 8);
  private static final FieldNumber CONTROL_NUMBER = new FieldNumber(1, 9);

  private final Map<List<String>, String> first = new HashMap<>();

  /**
   * The report, with a finding where an earlier file of this run has the same control number.
   *
   * @param name what the report calls the file
   */
  public FindingsReport check(String name, FindingsReport report) {
    Optional<LogicalRecord> header = report.transaction().header();
    Optional<String> number = header.flatMap(record -> record.text(CONTROL_NUMBER.field()));
    if (number.isEmpty()) {
      return report;
    }
    String originator = header.get().text(ORIGINATOR.field()).orElse("");
    String earlier = first.putIfAbsent(List.of(originator, number.get()), name);
    return earlier == null ? report : report.plus(finding(report, header.get(), earlier));
  }

  private static Finding finding(FindingsReport report, LogicalRecord header, String earlier) {
    FindingLog log = new FindingLog(report.tables(), 1);
    log.add(
        "RP-TXN-060",
        Location.of(header, header.field(CONTROL_NUMBER).orElseThrow()),
        Observed.of("same number as in " + earlier),
        "a unique control number",
        List.of());
    return log.findings().get(0);
  }
}
