package ridgeproof.examination.rules.image;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.RidgeImage;
import ridgeproof.examination.SampleCard;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.PixelStatistics;
import ridgeproof.examination.facts.SecondDecoding;
import ridgeproof.finding.Finding;
import ridgeproof.finding.FindingLog;
import ridgeproof.imagery.Decoding;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.ImageDefect;
import ridgeproof.imagery.ImageHeader;
import ridgeproof.imagery.header.ImageHeaders;

class SecondDecoderRuleTest {

  private static final GrayImage PRINT = RidgeImage.usual();
  private static final byte[] CARD =
      RidgeImage.withThumb(RidgeImage.record(1, PRINT, RidgeImage.wsq(PRINT), "WSQ20", "500"))
          .bytes();

  private static List<Finding> found(List<Finding> findings) {
    return findings.stream()
        .filter(finding -> new SecondDecoderRule().ids().contains(finding.ruleId()))
        .toList();
  }

  private static List<Finding> foundWith(Decoding other) {
    FindingsReport report = SampleCard.examine(CARD);
    ExaminedImage thumb = report.images().get(0);
    ImageHeader header = ImageHeaders.read(thumb.data().orElseThrow());
    PixelStatistics facts =
        PixelStatistics.of(PRINT, true, Optional.of(SecondDecoding.of(PRINT, other)));
    ExaminationInput examinee =
        new ExaminationInput(
            report.transaction(),
            SampleCard.TABLES,
            Depth.IMAGES,
            List.of(thumb.opened(header, Optional.of(facts), List.of(), Optional.empty())),
            Optional.empty(),
            false,
            ExaminationOptions.standard(),
            Optional.empty());
    FindingLog log = new FindingLog(SampleCard.TABLES, 10);
    new SecondDecoderRule().check(examinee, log);
    return log.findings();
  }

  private static Decoding brighterBy(int levels) {
    return new Decoding(
        Optional.of(RidgeImage.mapped(PRINT, gray -> Math.min(255, gray + levels))), List.of());
  }

  @Test
  void nothingIsComparedUnlessAsked() {
    assertEquals(List.of(), found(SampleCard.examine(CARD).findings()));
  }

  @Test
  void theDifferenceOfTheDecodersIsReportedForEachWsqImage() {
    ExaminationOptions options =
        ExaminationOptions.standard().withDepth(Depth.IMAGES).withSecondDecoder(true);
    List<Finding> found = found(SampleCard.examine(CARD, options).findings());
    assertEquals(1, found.size());
    assertEquals("RP-IMG-043", found.get(0).ruleId());
    assertTrue(found.get(0).evidence().get(0).value() <= 1);
  }

  @Test
  void oneGrayLevelIsWithinTheRoundingOfDecoders() {
    assertEquals("RP-IMG-043", foundWith(brighterBy(1)).get(0).ruleId());
  }

  @Test
  void moreThanOneGrayLevelIsAFinding() {
    Finding finding = foundWith(brighterBy(2)).get(0);
    assertEquals("RP-IMG-041", finding.ruleId());
    assertEquals("largest difference 2, mean 2.00000 gray levels", finding.observed().text());
  }

  @Test
  void aSecondDecoderWithoutAnImageIsAFinding() {
    Decoding none = Decoding.failed(new ImageDefect(ImageDefect.Kind.DAMAGE, 0, "no"));
    assertEquals("RP-IMG-042", foundWith(none).get(0).ruleId());
  }
}
