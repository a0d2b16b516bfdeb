package ridgeproof.gate;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.function.Supplier;
import ridgeproof.examination.Examiner;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.Verdict;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.report.FileFacts;
import ridgeproof.report.RenderOptions;
import ridgeproof.report.TextSanitizer;
import ridgeproof.report.page.HtmlReport;
import ridgeproof.transaction.record.ByteSource;

/** Examines what comes to a gate. A file that cannot be examined is never READY. */
public final class GateExamination {

  private static final String NOT_CHECKED = "NOT CHECKED";

  private final Examiner examiner;
  private final Supplier<ExaminationOptions> options;

  /**
   * @param options asked for each file, since the day changes while a gate runs
   */
  public GateExamination(Examiner examiner, Supplier<ExaminationOptions> options) {
    this.examiner = examiner;
    this.options = options;
  }

  Checked check(String name, byte[] bytes) {
    try {
      String sha256 = sha256(bytes);
      FindingsReport report = examiner.examine(ByteSource.of(bytes), options.get());
      return new Checked(
          sha256,
          report.verdict().name(),
          report.verdict() == Verdict.READY,
          HtmlReport.render(
              new FileFacts(name, bytes.length, sha256), report, RenderOptions.standard()),
          report.actions().isEmpty() ? "" : report.actions().get(0).remedy());
    } catch (OutOfMemoryError e) {
      return notChecked("There was not enough memory to check this file.");
    } catch (RuntimeException | StackOverflowError e) {
      // What the file holds must not come out by way of a message.
      return notChecked("This file could not be checked because of an internal error.");
    }
  }

  static Checked notChecked(String why) {
    String page =
        "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n"
            + "<title>Not checked</title>\n</head>\n<body>\n<h1>Not checked</h1>\n<p>"
            + why
            + "</p>\n</body>\n</html>\n";
    return new Checked("", NOT_CHECKED, false, page, TextSanitizer.of(why));
  }

  static String sha256(byte[] bytes) {
    return HexFormat.of().formatHex(sha256().digest(bytes));
  }

  static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
