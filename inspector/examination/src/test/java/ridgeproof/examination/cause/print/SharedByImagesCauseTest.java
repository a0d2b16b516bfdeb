package ridgeproof.examination.cause.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ridgeproof.examination.SampleCard;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.finding.Finding;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.transaction.writer.FieldDraft;
import ridgeproof.transaction.writer.RecordDraft;

/** What is wrong with all images alike is one finding; with one of them, a finding of that one. */
class SharedByImagesCauseTest {

  private static final String BYTES = "RP-IMG-011";

  private static List<Finding> found(int images) {
    SampleCard card = SampleCard.rolledTagged();
    for (int record = 3; record < 3 + images; record++) {
      card = card.with(record, draft -> draft.with(6, Integer.toString(SampleCard.WIDTH + 1)));
    }
    return card.examine().findings().stream()
        .filter(finding -> finding.ruleId().equals(BYTES))
        .toList();
  }

  @Test
  void ofAllImagesItIsOneFindingOfTheFile() {
    List<Finding> found = found(14);
    assertEquals(1, found.size());
    assertEquals(OptionalInt.empty(), found.get(0).location().record());
    assertTrue(found.get(0).observed().text().startsWith("14 of 14 images"));
    assertTrue(found.get(0).explains().isPresent());
  }

  @Test
  void ofTwoImagesItIsTwo() {
    assertEquals(2, found(2).size());
  }

  /** Which source a row has decides how grave it is: what is only remembered holds no file. */
  @Test
  void ofAllImagesItIsAsGraveAndFromTheSameSourceAsOfOne() {
    SampleCard card = SampleCard.rolledTagged();
    for (int record = 3; record < 17; record++) {
      card = card.with(record, draft -> draft.with(9, "1000").with(10, "1000").with(11, "WSQ20"));
    }
    assertEquals(
        Set.of("LIKELY ITL2015: compression algorithm codes"),
        card.examine().everyFinding().stream()
            .filter(finding -> finding.ruleId().equals("RP-IMG-012"))
            .map(f -> f.severity() + " " + f.source().document() + ": " + f.source().place())
            .collect(Collectors.toSet()));
  }

  private static RecordDraft photograph(String compression) {
    return RecordDraft.tagged(
        10,
        List.of(
            SampleCard.text(10, 1, ""),
            SampleCard.text(10, 2, "20"),
            SampleCard.text(10, 3, "FACE"),
            SampleCard.text(10, 6, Integer.toString(SampleCard.WIDTH)),
            SampleCard.text(10, 7, Integer.toString(SampleCard.HEIGHT)),
            SampleCard.text(10, 11, compression),
            FieldDraft.data(new FieldNumber(10, 999), SampleCard.pixels(768))));
  }

  /** Photographs count where they have the fault too. */
  @ParameterizedTest
  @CsvSource({"JPEGB, 15 of 15 images", "NONE, 14 of 14 images"})
  void neverMoreImagesHaveItThanThereAre(String compression, String share) {
    SampleCard card = SampleCard.rolledTagged();
    for (int record = 3; record < 17; record++) {
      card = card.with(record, draft -> draft.with(11, "JPEGB"));
    }
    List<String> found =
        SampleCard.examine(
                card.plus(photograph(compression)).bytes(),
                ExaminationOptions.standard().withToday(SampleCard.TODAY).withDepth(Depth.IMAGES))
            .findings()
            .stream()
            .filter(finding -> finding.ruleId().equals("RP-IMG-005"))
            .map(finding -> finding.observed().text())
            .toList();
    assertEquals(List.of(share + ", for example: code JPEGB, JPEG"), found);
  }
}
