package ridgeproof.examination.example;

import static java.nio.charset.StandardCharsets.US_ASCII;

import java.io.ByteArrayOutputStream;
import java.util.Arrays;
import java.util.Optional;
import java.util.Random;
import java.util.function.DoubleFunction;
import java.util.function.IntUnaryOperator;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import ridgeproof.examination.RidgeImage;
import ridgeproof.examination.RuleExamples;
import ridgeproof.examination.SampleCard;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.codec.PngWriter;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.writer.FieldDraft;
import ridgeproof.transaction.writer.RecordDraft;

/** Images whose pixels, codestream or scale tell that something is wrong. */
final class PixelExamples {

  private static final GrayImage PRINT = RidgeImage.usual();

  private final ExampleList list = new ExampleList("pixels");

  private PixelExamples() {
    codestreams();
    grays();
    scans();
    scale();
    same();
  }

  static ExampleList list() {
    return new PixelExamples().list;
  }

  private void codestreams() {
    byte[] wsq = RidgeImage.wsq(PRINT);
    image("RP-IMG-030 twice", PRINT, joined(wsq, wsq), "WSQ20");
    image("RP-IMG-030 another", PRINT, joined(png(PRINT), new byte[9], wsq), "PNG");
    image("RP-IMG-031", PRINT, commented(wsq, "NIST_COM 3\nLOSSY 1\nCOMPRESSION JPEGB\n"), "WSQ20");
    GrayImage bytes =
        GrayImage.owning(100, wsq.length / 100, Arrays.copyOf(wsq, wsq.length / 100 * 100));
    image("RP-IMG-032", bytes, png(bytes), "PNG");
    list.with(
        ExaminationOptions.standard()
            .withToday(SampleCard.TODAY)
            .withDepth(Depth.IMAGES)
            .withSecondDecoder(true),
        "RP-IMG-043",
        RidgeImage.withThumb(RidgeImage.record(1, PRINT, wsq, "WSQ20", "500")));
  }

  private void image(String example, GrayImage size, byte[] data, String code) {
    list.add(example, RidgeImage.withThumb(RidgeImage.record(1, size, data, code, "500")));
  }

  private static byte[] png(GrayImage image) {
    return PngWriter.encode(image, Optional.empty());
  }

  private static byte[] joined(byte[]... parts) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    for (byte[] part : parts) {
      bytes.writeBytes(part);
    }
    return bytes.toByteArray();
  }

  /** The codestream with a comment right behind its start marker. */
  private static byte[] commented(byte[] wsq, String text) {
    byte[] comment = text.getBytes(US_ASCII);
    byte[] marker = {(byte) 0xFF, (byte) 0xA8, 0, (byte) (comment.length + 2)};
    return joined(Arrays.copyOf(wsq, 2), marker, comment, Arrays.copyOfRange(wsq, 2, wsq.length));
  }

  private void grays() {
    thumb("RP-IMG-033", gray -> 255);
    thumb("RP-IMG-034", gray -> 230 + gray % 7);
    thumb("RP-IMG-035", gray -> 140 + gray * 100 / 255);
    cards("RP-IMG-036", "500", image -> RidgeImage.mapped(image, gray -> 60 + gray * 170 / 255));
    thumb("RP-IMG-037", gray -> 255 - gray);
    cards("RP-IMG-051", "500", image -> RidgeImage.mapped(image, gray -> 255 - gray));
  }

  private void thumb(String example, IntUnaryOperator change) {
    pixels(example, () -> RidgeImage.mapped(PRINT, change));
  }

  private void pixels(String example, Supplier<GrayImage> image) {
    list.bytes(example, () -> RidgeImage.withThumb(image.get()).bytes());
  }

  private void cards(String example, String ppi, UnaryOperator<GrayImage> change) {
    cards(example, RidgeImage::withPeriod, ppi, change);
  }

  /** A whole card of prints that differ a little in the distance of their ridges. */
  private void cards(
      String example,
      DoubleFunction<GrayImage> print,
      String ppi,
      UnaryOperator<GrayImage> change) {
    list.bytes(
        example,
        () -> {
          SampleCard card = SampleCard.rolledTagged();
          for (int position = 1; position <= 14; position++) {
            int at = position;
            GrayImage image = change.apply(print.apply(9 + 0.03 * position));
            card =
                card.with(
                    position + 2,
                    old -> RidgeImage.record(at, image, image.toArray(), "NONE", ppi));
          }
          return card.bytes();
        });
  }

  private void scans() {
    pixels("RP-IMG-038", () -> painted(0, 24, 16));
    thumb("RP-IMG-044", gray -> gray < 140 ? 4 : 250);
    pixels("RP-IMG-047", PixelExamples::blackFromTheMiddle);
    pixels("RP-IMG-048", PixelExamples::begunInTheMiddle);
  }

  /** The print with its first rows and columns in one gray. */
  private static GrayImage painted(int gray, int rows, int columns) {
    byte[] pixels = PRINT.toArray();
    for (int i = 0; i < pixels.length; i++) {
      if (i / PRINT.width() < rows || i % PRINT.width() < columns) {
        pixels[i] = (byte) gray;
      }
    }
    return GrayImage.owning(PRINT.width(), PRINT.height(), pixels);
  }

  private static GrayImage blackFromTheMiddle() {
    byte[] pixels = PRINT.toArray();
    Arrays.fill(pixels, pixels.length / 2, pixels.length, (byte) 0);
    return GrayImage.owning(PRINT.width(), PRINT.height(), pixels);
  }

  private static GrayImage begunInTheMiddle() {
    int width = PRINT.width();
    byte[] pixels = new byte[width * PRINT.height()];
    for (int i = 0; i < pixels.length; i++) {
      pixels[i] = (byte) PRINT.grayAt((i % width + width / 2) % width, i / width);
    }
    return GrayImage.owning(width, PRINT.height(), pixels);
  }

  private void scale() {
    list.pair("RP-IMG-039", () -> ridges(18.5), () -> ridges(13));
    cards("RP-IMG-040", "1000", image -> image);
    list.add("RP-IMG-052 inches", unit("1", "197"));
    list.add("RP-IMG-052 centimeters", unit("2", "500"));
    cards("RP-IMG-053", RidgeImage::whorl, "500", PixelExamples::enlarged);
    list.bytes("RP-IMG-054", () -> notedAt250().bytes());
    list.add(
        "RP-IMG-055",
        RuleExamples.wsqCard(PRINT, 2).with(3, draft -> draft.with(6, "512").with(7, "480")));
  }

  private static SampleCard ridges(double period) {
    return RidgeImage.withThumb(RidgeImage.withPeriod(period));
  }

  private static SampleCard unit(String unit, String number) {
    return RuleExamples.wsqCard(PRINT, 2)
        .with(3, draft -> draft.with(8, unit).with(9, number).with(10, number));
  }

  /** Every second pixel, and each made four that lean a quarter to its neighbors. */
  private static GrayImage enlarged(GrayImage image) {
    byte[] pixels = new byte[image.width() * image.height()];
    for (int i = 0; i < pixels.length; i++) {
      int x = i % image.width();
      int y = i / image.width();
      int near = lean(image, x, y / 2 * 2);
      int far = lean(image, x, beside(y, image.height()));
      pixels[i] = (byte) ((3 * near + far) / 4);
    }
    return GrayImage.owning(image.width(), image.height(), pixels);
  }

  private static int lean(GrayImage image, int x, int row) {
    return (3 * image.grayAt(x / 2 * 2, row) + image.grayAt(beside(x, image.width()), row)) / 4;
  }

  private static int beside(int at, int size) {
    return Math.max(0, Math.min(size - 2, at / 2 * 2 + (at % 2 == 0 ? -2 : 2)));
  }

  /** Four images that note 250 ppi inside, in records of 500 ppi. */
  private static SampleCard notedAt250() {
    SampleCard card = SampleCard.rolledTagged();
    for (int position = 1; position <= 4; position++) {
      String number = Integer.toString(position);
      int shade = position;
      RecordDraft noted =
          RuleExamples.wsqRecord(
              RidgeImage.mapped(RidgeImage.withPeriod(8.5 + 0.4 * position), gray -> gray - shade),
              250);
      card = card.with(position + 2, draft -> noted.with(2, "0" + number).with(13, number));
    }
    return card;
  }

  private void same() {
    list.add("RP-TXN-080", noisy(noisy(SampleCard.rolledTagged(), 5), 9));
    list.add("RP-TXN-081", impression(SampleCard.rolledTagged(), 4, 4, "0"));
    list.add("RP-TXN-081 all", impression(SampleCard.rolledTagged(), 1, 10, "0"));
    list.add("RP-TXN-082", impression(SampleCard.rolledTagged(), 11, 14, "1"));
  }

  private static SampleCard noisy(SampleCard card, int record) {
    byte[] pixels = new byte[100 * 100];
    new Random(1).nextBytes(pixels);
    return card.with(record, draft -> draft.with(6, "100").with(7, "100"))
        .withField(record, FieldDraft.data(new FieldNumber(14, 999), ByteSource.of(pixels)));
  }

  private static SampleCard impression(SampleCard card, int from, int to, String impression) {
    SampleCard changed = card;
    for (int position = from; position <= to; position++) {
      changed = changed.with(position + 2, draft -> draft.with(3, impression));
    }
    return changed;
  }
}
