package ridgeproof.gate;

import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import ridgeproof.corpus.composition.SubjectCache;
import ridgeproof.corpus.composition.TransactionComposer;
import ridgeproof.corpus.scenario.DemonstrationSet;
import ridgeproof.examination.Examiner;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.spec.SpecTables;
import ridgeproof.transaction.reader.ParseLimits;

/** Files of the invented pilots' office, and a gate's settings over them. */
final class HarborFiles {

  static final String REASON = "Repeated attempts gave the same result";

  private static final SpecTables TABLES = SpecTables.open();
  private static final Map<String, byte[]> STORIES = new ConcurrentHashMap<>();

  private HarborFiles() {}

  /** A file that may be sent. */
  static byte[] ready(int number) {
    return numbered(story("clean-flats"), number);
  }

  /** A file that may not: the date of birth is no date. */
  static byte[] held(int number) {
    return numbered(story("date-turned-round"), number);
  }

  private static byte[] story(String name) {
    return STORIES.computeIfAbsent(
        name,
        key ->
            new TransactionComposer(new SubjectCache())
                .compose(DemonstrationSet.scenario(key))
                .bytes());
  }

  /** The same file with another control number of the same length. */
  private static byte[] numbered(byte[] bytes, int number) {
    String text = new String(bytes, StandardCharsets.ISO_8859_1);
    String written = String.format(Locale.ROOT, "PILOT-%04d", number);
    String changed = text.replaceFirst("PILOT-[0-9]{4}", written);
    if (!changed.contains(written) || changed.length() != text.length()) {
      throw new IllegalStateException("the story has no such control number");
    }
    return changed.getBytes(StandardCharsets.ISO_8859_1);
  }

  /** At structure depth, which takes milliseconds. */
  static GateExamination examination() {
    ExaminationOptions options =
        ExaminationOptions.standard()
            .withDepth(Depth.STRUCTURE)
            .withToday(LocalDate.of(2026, 3, 2));
    return new GateExamination(new Examiner(TABLES, ParseLimits.standard()), () -> options);
  }

  static GateSettings settings() {
    return settings(Duration.ZERO);
  }

  static GateSettings settings(Duration settle) {
    return new GateSettings(settle, 1_000_000, List.of(REASON), Clock.systemUTC());
  }
}
