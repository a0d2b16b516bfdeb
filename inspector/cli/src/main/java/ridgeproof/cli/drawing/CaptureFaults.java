package ridgeproof.cli.drawing;

import java.util.Map;
import java.util.Set;
import ridgeproof.corpus.impression.CaptureDefect;
import ridgeproof.corpus.impression.ImpressionSettings;

/** What in a capture makes the finding of a rule. */
final class CaptureFaults {

  /** How much of a defect is tried, from the first attempt to the last. */
  private static final double[] STRENGTHS = {0.65, 0.85, 1, 0.45, 0.25};

  private static final Map<String, CaptureDefect> DEFECTS =
      Map.ofEntries(
          Map.entry("RP-IMG-034", CaptureDefect.BLANK),
          Map.entry("RP-IMG-035", CaptureDefect.LOW_CONTRAST),
          Map.entry("RP-RDG-001", CaptureDefect.BLANK),
          Map.entry("RP-RDG-002", CaptureDefect.TOO_FEW_MINUTIAE),
          Map.entry("RP-RDG-003", CaptureDefect.ROLL_NOT_WIDE),
          Map.entry("RP-RDG-004", CaptureDefect.TOO_DRY),
          Map.entry("RP-RDG-005", CaptureDefect.TOO_WET),
          Map.entry("RP-RDG-006", CaptureDefect.SLIPPAGE),
          Map.entry("RP-RDG-007", CaptureDefect.LIFTED_DURING_ROLL),
          Map.entry("RP-RDG-008", CaptureDefect.CORE_MISSING),
          Map.entry("RP-RDG-009", CaptureDefect.ROTATED),
          Map.entry("RP-RDG-010", CaptureDefect.CLIPPED_AT_BORDER),
          Map.entry("RP-RDG-011", CaptureDefect.BLURRED),
          Map.entry("RP-RDG-012", CaptureDefect.LOW_CONTRAST),
          Map.entry("RP-RDG-014", CaptureDefect.TOO_FEW_MINUTIAE),
          Map.entry("RP-RDG-015", CaptureDefect.LATENT_GHOST));

  private CaptureFaults() {}

  /** A capture of which these rules report something. */
  static ImpressionSettings spoilt(
      ImpressionSettings settings, boolean rolled, int attempt, Set<String> rules) {
    ImpressionSettings spoilt = settings;
    for (String rule : rules) {
      CaptureDefect defect = DEFECTS.get(rule);
      if (defect != null && defect.befalls(rolled)) {
        double strength =
            defect == CaptureDefect.BLANK ? 1 : STRENGTHS[Math.min(attempt, STRENGTHS.length - 1)];
        spoilt = spoilt.withDefect(defect, strength);
      }
    }
    return spoilt;
  }
}
