package ridgeproof.api;

import java.util.List;

/**
 * What was found in a file.
 *
 * @param name of the file, without its folders
 * @param sha256 of its bytes, 64 hexadecimal digits
 * @param findings in the order of the file, those of the file as a whole first
 * @param actions what to do, the most pressing first
 * @param json the whole report by the schema {@code ridgeproof/report/findings-report.schema.json},
 *     which is on the class path
 */
public record CheckedFile(
    String name,
    String sha256,
    FileVerdict verdict,
    List<ReportedFinding> findings,
    List<String> actions,
    String json) {

  public CheckedFile {
    findings = List.copyOf(findings);
    actions = List.copyOf(actions);
  }
}
