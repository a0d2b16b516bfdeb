package ridgeproof.api;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import ridgeproof.examination.Examiner;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.RecommendedAction;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.report.FileFacts;
import ridgeproof.report.RenderOptions;
import ridgeproof.report.data.JsonReport;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.SubmissionProfile;
import ridgeproof.spec.agency.AgencyProfileReader;
import ridgeproof.spec.agency.ProfileReading;
import ridgeproof.transaction.reader.ParseLimits;
import ridgeproof.transaction.record.ByteSource;

/**
 * Checks ANSI/NIST-ITL transaction files before they are sent. Immutable and safe to share between
 * threads; each method that begins with {@code with} returns another checker. Nothing is written,
 * and no network is used.
 */
public final class TransactionChecker {

  private final SpecTables tables;
  private final ExaminationOptions options;
  private final boolean everyDay;
  private final boolean personalShown;

  private TransactionChecker(
      SpecTables tables, ExaminationOptions options, boolean everyDay, boolean personalShown) {
    this.tables = tables;
    this.options = options;
    this.everyDay = everyDay;
    this.personalShown = personalShown;
  }

  /**
   * Checks everything, by the prints that the contents of each file imply, as of today in UTC.
   * Personal data is masked.
   */
  public static TransactionChecker standard() {
    return new TransactionChecker(SpecTables.open(), ExaminationOptions.standard(), true, false);
  }

  /** Checks only this deep. */
  public TransactionChecker withDepth(CheckDepth depth) {
    return with(options.withDepth(Depth.valueOf(depth.name())));
  }

  /**
   * Checks for the prints of a set that comes with Ridgeproof.
   *
   * @param name such as rolled-card or identification-flats
   * @throws IllegalArgumentException where there is no such set; the message names those there are
   */
  public TransactionChecker withProfile(String name) {
    SubmissionProfile profile =
        tables
            .profileNamed(name)
            .orElseThrow(() -> new IllegalArgumentException(tables.noProfile(name)));
    return with(options.withProfile(profile));
  }

  /**
   * Checks also what one receiving agency requires.
   *
   * @param toml the text of the agency's profile, as for the option --profile
   * @throws IllegalArgumentException where it cannot be used; the message has line and column
   */
  public TransactionChecker withAgencyProfile(String toml) {
    ProfileReading reading = AgencyProfileReader.read(toml, tables);
    if (reading instanceof ProfileReading.Unusable unusable) {
      throw new IllegalArgumentException(unusable.problems().get(0).inFile("profile"));
    }
    return with(options.withAgency(((ProfileReading.Usable) reading).profile()));
  }

  /** Checks dates as of this day instead of the day of each check. */
  public TransactionChecker withDate(LocalDate day) {
    return new TransactionChecker(tables, options.withToday(day), false, personalShown);
  }

  /** Shows personal data or masks it, in findings and JSON alike. */
  public TransactionChecker withPersonalData(boolean shown) {
    return new TransactionChecker(tables, options, everyDay, shown);
  }

  private TransactionChecker with(ExaminationOptions other) {
    return new TransactionChecker(tables, other, everyDay, personalShown);
  }

  /**
   * Checks a file, which is only read.
   *
   * @throws IOException where the file cannot be read, or has more than 512 MiB; whatever its bytes
   *     are is a finding
   */
  public CheckedFile check(Path file) throws IOException {
    int maxBytes = ParseLimits.standard().maxBytes();
    byte[] bytes;
    try (InputStream in = Files.newInputStream(file)) {
      bytes = in.readNBytes(maxBytes + 1); // a device states no size and need not end
    }
    if (bytes.length > maxBytes) {
      throw new IOException(file + ": more than " + maxBytes + " bytes");
    }
    return check(file.getFileName().toString(), bytes);
  }

  /**
   * Checks the bytes of a file, which stay unchanged meanwhile.
   *
   * @param name what the report calls the file
   */
  public CheckedFile check(String name, byte[] bytes) {
    ExaminationOptions now =
        everyDay ? options.withToday(ExaminationOptions.standard().today()) : options;
    ByteSource source = ByteSource.of(bytes);
    FindingsReport report = new Examiner(tables, ParseLimits.standard()).examine(source, now);
    FileFacts facts = new FileFacts(name, bytes.length, source.sha256());
    RenderOptions rendering = new RenderOptions(personalShown, false, 0);
    FindingConversion conversion = new FindingConversion(report, personalShown);
    List<ReportedFinding> findings = report.findings().stream().map(conversion::of).toList();
    return new CheckedFile(
        name,
        facts.sha256(),
        FileVerdict.valueOf(report.verdict().name()),
        findings,
        report.actions().stream().map(RecommendedAction::remedy).toList(),
        JsonReport.render(facts, report, rendering));
  }
}
