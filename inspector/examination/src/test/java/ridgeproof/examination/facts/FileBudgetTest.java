package ridgeproof.examination.facts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.SampleCard;
import ridgeproof.examination.Verdict;
import ridgeproof.finding.Finding;
import ridgeproof.imagery.DecodingLimits;

/** One budget for all images of a file, spent in the order of the file whatever the machine. */
class FileBudgetTest {

  private static final Duration LONG = Duration.ofMinutes(5);
  private static final long PIXELS = (long) SampleCard.WIDTH * SampleCard.HEIGHT;

  private static FindingsReport examine(DecodingLimits limits, int threads) {
    ExaminationOptions options =
        new ExaminationOptions(
            Depth.IMAGES,
            Optional.empty(),
            Optional.empty(),
            SampleCard.TODAY,
            limits,
            threads,
            false,
            false);
    return SampleCard.examine(SampleCard.rolled().bytes(), options);
  }

  private static List<Boolean> decoded(FindingsReport report) {
    return report.images().stream().map(image -> image.pixels().isPresent()).toList();
  }

  private static List<Finding> limits(FindingsReport report) {
    return report.findings().stream()
        .filter(finding -> finding.ruleId().equals("RP-IMG-070"))
        .toList();
  }

  @Test
  void pixelsAreSpentInTheOrderOfTheFileByOneThreadAsByMany() {
    DecodingLimits three =
        new DecodingLimits(PIXELS, LONG, OptionalLong.of(3 * PIXELS + PIXELS / 2), LONG);
    FindingsReport one = examine(three, 1);
    FindingsReport many = examine(three, 8);
    assertEquals(decoded(one), decoded(many));
    assertEquals(List.of(true, true, true), decoded(one).subList(0, 3));
    assertTrue(decoded(one).subList(3, one.images().size()).stream().noneMatch(is -> is));
    assertEquals(1, limits(one).size(), "one finding for the file");
    int left = one.images().size() - 3;
    assertEquals(
        String.format(
            Locale.ROOT,
            "%d of %d images not fully examined: %.1f million samples, %.1f left",
            left,
            one.images().size(),
            PIXELS / 1e6,
            PIXELS / 2 / 1e6),
        limits(one).get(0).observed().text(),
        "uncut");
    assertTrue(one.verdict().compareTo(Verdict.REVIEW) >= 0);
  }

  @Test
  void enoughIsEnough() {
    long all = PIXELS * examine(DecodingLimits.standard(), 1).images().size();
    FindingsReport report =
        examine(new DecodingLimits(PIXELS, LONG, OptionalLong.of(all), LONG), 4);
    assertTrue(decoded(report).stream().allMatch(is -> is));
    assertEquals(List.of(), limits(report));
  }

  @Test
  void pastTheTimeOfTheFileNoImageIsBegun() {
    FindingsReport report =
        examine(new DecodingLimits(PIXELS, LONG, OptionalLong.empty(), Duration.ZERO), 2);
    assertTrue(decoded(report).stream().noneMatch(is -> is));
    assertEquals(1, limits(report).size());
  }
}
