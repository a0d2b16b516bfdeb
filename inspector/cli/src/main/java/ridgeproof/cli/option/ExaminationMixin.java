package ridgeproof.cli.option;

import java.time.LocalDate;
import picocli.CommandLine.Option;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.spec.SpecTables;

/** How deep to look and what to hold a file to: every command that examines has it. */
public final class ExaminationMixin {

  @Option(
      names = "--depth",
      paramLabel = "DEPTH",
      defaultValue = "ridges",
      converter = DepthConverter.class,
      description =
          "structure: records, fields, and codes; images: also the images; ridges: also print"
              + " quality and finger positions (default: ridges)")
  Depth depth;

  @Option(
      names = "--profile",
      paramLabel = "NAME|FILE",
      description =
          "the set of prints that the bureau expects: rolled-card, identification-flats, or an"
              + " agency's own profile such as docs/examples/tidewater-pilots.toml (default: inferred"
              + " from the file's contents)")
  public String profile;

  @Option(
      names = "--as-of",
      paramLabel = "DATE",
      converter = DateConverter.class,
      description = "check dates as of this day, such as 2026-03-02 (default: today)")
  LocalDate asOf;

  public ExaminationOptions options(LimitOptions limits, SpecTables tables) {
    ExaminationOptions options =
        ExaminationOptions.standard().withDepth(depth).withImageLimits(limits.decoding());
    if (asOf != null) {
      options = options.withToday(asOf);
    }
    return profile == null ? options : NamedProfile.applyTo(options, profile, tables);
  }
}
