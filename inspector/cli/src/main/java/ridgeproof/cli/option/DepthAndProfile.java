package ridgeproof.cli.option;

import java.time.LocalDate;
import picocli.CommandLine.Option;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.spec.SpecTables;

/** How deep to look and what to hold a file to: every command that examines has it. */
public final class DepthAndProfile {

  @Option(
      names = "--depth",
      paramLabel = "DEPTH",
      defaultValue = "ridges",
      converter = DepthConverter.class,
      description = {
        "structure: records, fields and codes; images: also what is in the images; ridges: also",
        "whether the prints are good and each finger is in its place; ridges unless set"
      })
  Depth depth;

  @Option(
      names = "--profile",
      paramLabel = "NAME|FILE",
      description =
          "what the bureau expects: rolled-card, identification-flats, or the file of an agency's"
              + " own profile such as docs/examples/tidewater-pilots.toml; what the file itself implies"
              + " unless set")
  String profile;

  @Option(
      names = "--as-of",
      paramLabel = "DATE",
      converter = DateConverter.class,
      description =
          "the day that dates in the file are compared with, such as 2026-03-02 (default: today)")
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
