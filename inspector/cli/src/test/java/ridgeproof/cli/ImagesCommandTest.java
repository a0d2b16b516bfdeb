package ridgeproof.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ridgeproof.corpus.composition.SubjectCache;
import ridgeproof.corpus.composition.TransactionComposer;
import ridgeproof.corpus.scenario.DemonstrationSet;
import ridgeproof.imagery.ImageHeader;
import ridgeproof.imagery.header.ImageHeaders;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.record.CharacterEncoding;
import ridgeproof.transaction.writer.FieldDraft;
import ridgeproof.transaction.writer.RecordDraft;
import ridgeproof.transaction.writer.TransactionWriter;

class ImagesCommandTest {

  private static final int WIDTH = 60;
  private static final int HEIGHT = 40;

  @TempDir Path folder;

  private static FieldDraft text(int type, int field, String value) {
    return FieldDraft.text(new FieldNumber(type, field), value);
  }

  /** A right slap that marks two fingers by boxes and one by an outline, and a thumb. */
  private Path transaction(List<List<String>> boxes) throws IOException {
    RecordDraft header =
        RecordDraft.tagged(
            1,
            List.of(
                text(1, 1, ""),
                text(1, 2, "0501"),
                text(1, 3, ""),
                text(1, 4, "FAUF"),
                text(1, 5, "20260302"),
                text(1, 7, "THP000000"),
                text(1, 8, "THP000001"),
                text(1, 9, "PILOT-0001"),
                text(1, 11, "00.00"),
                text(1, 12, "00.00")));
    RecordDraft slap = print(1, 13);
    List<FieldDraft> fields = new ArrayList<>(slap.fields());
    fields.add(fields.size() - 1, FieldDraft.text(new FieldNumber(14, 21), boxes));
    fields.add(
        fields.size() - 1,
        FieldDraft.text(
            new FieldNumber(14, 25), List.of(List.of("3", "3", "5", "2", "9", "12", "1", "7"))));
    byte[] bytes =
        new TransactionWriter(CharacterEncoding.ASCII)
            .write(List.of(header, RecordDraft.tagged(14, fields), print(2, 11)));
    return Files.write(folder.resolve("slap.an2"), bytes);
  }

  private static RecordDraft print(int idc, int position) {
    return RecordDraft.tagged(
        14,
        List.of(
            text(14, 1, ""),
            text(14, 2, "%02d".formatted(idc)),
            text(14, 3, "0"),
            text(14, 4, "TIDEWATER PILOTS"),
            text(14, 5, "20260302"),
            text(14, 6, Integer.toString(WIDTH)),
            text(14, 7, Integer.toString(HEIGHT)),
            text(14, 8, "1"),
            text(14, 9, "1000"),
            text(14, 10, "1000"),
            text(14, 11, "NONE"),
            text(14, 12, "8"),
            text(14, 13, Integer.toString(position)),
            FieldDraft.data(new FieldNumber(14, 999), ByteSource.of(new byte[WIDTH * HEIGHT]))));
  }

  private CommandRun run(Path file, String... options) {
    List<String> arguments =
        new ArrayList<>(
            List.of("images", file.toString(), "--output", folder.resolve("out").toString()));
    arguments.addAll(List.of(options));
    return CommandRun.of(arguments.toArray(String[]::new));
  }

  private List<String> written() throws IOException {
    try (Stream<Path> files = Files.list(folder.resolve("out"))) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  private static List<List<String>> twoBoxes() {
    return List.of(List.of("2", "0", "19", "0", "29"), List.of("3", "20", "39", "0", "34"));
  }

  @Test
  void withoutCropOnlyWholeImagesAreWritten() throws IOException {
    assertEquals(0, run(transaction(twoBoxes())).status());
    assertEquals(
        List.of("record-02-position-13-idc-01.png", "record-03-position-11-idc-02.png"), written());
  }

  @Test
  void withCropEachMarkedFingerIsWrittenToo() throws IOException {
    assertEquals(0, run(transaction(twoBoxes()), "--crop").status());
    assertEquals(
        List.of(
            "record-02-outline-03-idc-01.png",
            "record-02-position-13-idc-01.png",
            "record-02-segment-02-idc-01.png",
            "record-02-segment-03-idc-01.png",
            "record-03-position-11-idc-02.png"),
        written());
  }

  @Test
  void oneFingerIsTakenOutOfTheSlapAlone() throws IOException {
    assertEquals(0, run(transaction(twoBoxes()), "--crop", "--finger", "2").status());
    assertEquals(List.of("record-02-segment-02-idc-01.png"), written());
  }

  @Test
  void aCutHasItsSizeAndTheDensityOfItsImage() throws IOException {
    run(transaction(twoBoxes()), "--crop", "--finger", "2");
    byte[] png = Files.readAllBytes(folder.resolve("out/record-02-segment-02-idc-01.png"));
    ImageHeader header = ImageHeaders.read(ByteSource.of(png));
    assertEquals(20, header.width());
    assertEquals(30, header.height());
    assertEquals(1000, header.density().orElseThrow().horizontalPpi(), 0.1);
  }

  @Test
  void aSegmentOutsideItsImageIsToldAndTheOthersAreWritten() throws IOException {
    List<List<String>> boxes =
        List.of(List.of("2", "90", "99", "0", "9"), List.of("4", "0", "9", "0", "9"));
    CommandRun outcome = run(transaction(boxes), "--crop");
    assertEquals(1, outcome.status());
    assertTrue(written().contains("record-02-segment-04-idc-01.png"));
    assertEquals(
        "ridgeproof: record-02-segment-02-idc-01: outside its image", outcome.error().strip());
  }

  @Test
  void anOverlayIsWrittenBesideEachImageOfFingersAndDiffersFromIt() throws IOException {
    byte[] bytes =
        new TransactionComposer(new SubjectCache())
            .compose(DemonstrationSet.scenario("clean-flats"))
            .bytes();
    Path file = Files.write(folder.resolve("flats.an2"), bytes);
    Path output = folder.resolve("pictures");
    CommandRun run =
        CommandRun.of(
            "images",
            file.toString(),
            "--finger",
            "13",
            "--overlay",
            "--output",
            output.toString());
    assertEquals(0, run.status(), run::error);
    try (Stream<Path> files = Files.list(output)) {
      List<Path> written = files.sorted().toList();
      assertEquals(2, written.size(), written::toString);
      BufferedImage drawn = ImageIO.read(written.get(0).toFile());
      BufferedImage plain = ImageIO.read(written.get(1).toFile());
      assertEquals(plain.getWidth(), drawn.getWidth());
      assertTrue(coloured(drawn) > 1000);
      assertEquals(0, coloured(plain));
    }
  }

  private static long coloured(BufferedImage image) {
    long count = 0;
    for (int y = 0; y < image.getHeight(); y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        int rgb = image.getRGB(x, y);
        count += (rgb >> 16 & 0xFF) == (rgb & 0xFF) ? 0 : 1;
      }
    }
    return count;
  }
}
