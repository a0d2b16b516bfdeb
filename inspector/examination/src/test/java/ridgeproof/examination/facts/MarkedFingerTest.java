package ridgeproof.examination.facts;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.SampleCard;
import ridgeproof.imagery.DecodingLimits;
import ridgeproof.imagery.GrayImage;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.transaction.reader.ParseLimits;
import ridgeproof.transaction.reader.TransactionReader;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.writer.FieldDraft;
import ridgeproof.transaction.writer.RecordDraft;

class MarkedFingerTest {

  private static final ImageExtraction EXTRACTION =
      new ImageExtraction(SampleCard.TABLES, DecodingLimits.standard());

  private static ExaminedImage slap(int field, List<List<String>> subfields) {
    RecordDraft draft = SampleCard.taggedPrint(13, 13, 0);
    List<FieldDraft> fields = new ArrayList<>(draft.fields());
    fields.add(fields.size() - 1, FieldDraft.text(new FieldNumber(14, field), subfields));
    byte[] bytes =
        SampleCard.rolledTagged().with(15, old -> RecordDraft.tagged(14, fields)).bytes();
    return EXTRACTION
        .imagesOf(
            new TransactionReader(SampleCard.TABLES, ParseLimits.standard())
                .read(ByteSource.of(bytes)))
        .get(12);
  }

  private static Optional<GrayImage> firstCut(ExaminedImage image) {
    GrayImage pixels = EXTRACTION.decode(image).pixels().orElseThrow();
    return EXTRACTION.cut(image, pixels, EXTRACTION.markedFingersOf(image).get(0)).pixels();
  }

  @Test
  void aBoxIsCutOutWithBothItsEdges() {
    ExaminedImage image = slap(21, List.of(List.of("2", "3", "10", "4", "20")));
    GrayImage whole = EXTRACTION.decode(image).pixels().orElseThrow();
    GrayImage cut = firstCut(image).orElseThrow();
    assertEquals(8, cut.width());
    assertEquals(17, cut.height());
    assertEquals(whole.grayAt(3, 4), cut.grayAt(0, 0));
    assertEquals(whole.grayAt(10, 20), cut.grayAt(7, 16));
  }

  @Test
  void aPolygonIsCutOutByItsBoundingBox() {
    ExaminedImage image = slap(25, List.of(List.of("3", "3", "5", "2", "9", "12", "1", "7")));
    GrayImage cut = firstCut(image).orElseThrow();
    assertEquals(9, cut.width());
    assertEquals(11, cut.height());
  }

  @Test
  void whatReachesBeyondTheImageIsCutAtItsEdge() {
    GrayImage cut = firstCut(slap(21, List.of(List.of("2", "30", "99", "0", "99")))).orElseThrow();
    assertEquals(SampleCard.WIDTH - 30, cut.width());
    assertEquals(SampleCard.HEIGHT, cut.height());
  }

  @Test
  void nothingIsCutOutsideTheImageOrFromCrossedEdges() {
    assertEquals(Optional.empty(), firstCut(slap(21, List.of(List.of("2", "50", "60", "0", "9")))));
    assertEquals(Optional.empty(), firstCut(slap(21, List.of(List.of("2", "20", "10", "0", "9")))));
  }

  @Test
  void whatCannotBeReadAsABoxIsNone() {
    assertEquals(
        List.of(),
        EXTRACTION.markedFingersOf(
            slap(
                21,
                List.of(
                    List.of("2", "3", "x", "4", "20"),
                    List.of("3", "3", "10"),
                    List.of("", "3", "10", "4", "20")))));
  }

  @Test
  void eachSegmentIsNamedByRecordFingerAndIdc() {
    ExaminedImage image =
        slap(
            21,
            List.of(
                List.of("2", "0", "7", "0", "9"),
                List.of("3", "8", "15", "0", "9"),
                List.of("3", "16", "20", "0", "9")));
    GrayImage pixels = EXTRACTION.decode(image).pixels().orElseThrow();
    assertEquals(
        List.of(
            "record-15-segment-02-idc-13",
            "record-15-segment-03-idc-13",
            "record-15-segment-03-idc-13-2"),
        EXTRACTION.markedFingersOf(image).stream()
            .map(finger -> EXTRACTION.cut(image, pixels, finger).name())
            .toList());
  }
}
