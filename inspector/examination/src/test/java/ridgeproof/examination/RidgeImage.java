package ridgeproof.examination;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntUnaryOperator;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.wsq.WsqEncoder;
import ridgeproof.imagery.wsq.WsqEncoding;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.writer.FieldDraft;
import ridgeproof.transaction.writer.RecordDraft;

/** Made-up prints: arches in an oval on a light ground, and Type-14 records that hold them. */
public final class RidgeImage {

  public static final int WIDTH = 480;
  public static final int HEIGHT = 512;
  private static final double USUAL_PERIOD = 9.2;
  private static final int GROUND = 245;

  private RidgeImage() {}

  public static GrayImage usual() {
    return withPeriod(USUAL_PERIOD);
  }

  /** The same print with its ridges so many pixels apart. */
  public static GrayImage withPeriod(double period) {
    return about(HEIGHT * 1.3, period);
  }

  /** Ridges that run in every direction. */
  public static GrayImage whorl(double period) {
    return about(HEIGHT / 2.0, period);
  }

  private static GrayImage about(double middle, double period) {
    byte[] pixels = new byte[WIDTH * HEIGHT];
    for (int y = 0; y < HEIGHT; y++) {
      for (int x = 0; x < WIDTH; x++) {
        double across = (x - WIDTH / 2.0) / (WIDTH * 0.42);
        double down = (y - HEIGHT / 2.0) / (HEIGHT * 0.42);
        double inside = Math.min(1, Math.max(0, 8 * (1 - Math.hypot(across, down))));
        double arch = Math.hypot(x - WIDTH / 2.0, y - middle);
        double ridge = (1 + Math.cos(2 * Math.PI * arch / period)) / 2;
        pixels[y * WIDTH + x] = (byte) Math.round(GROUND - inside * ridge * 220);
      }
    }
    return GrayImage.owning(WIDTH, HEIGHT, pixels);
  }

  public static GrayImage mapped(GrayImage image, IntUnaryOperator change) {
    byte[] pixels = image.toArray();
    for (int i = 0; i < pixels.length; i++) {
      pixels[i] = (byte) change.applyAsInt(pixels[i] & 0xFF);
    }
    return GrayImage.owning(image.width(), image.height(), pixels);
  }

  public static GrayImage constant(int gray) {
    return mapped(usual(), old -> gray);
  }

  public static byte[] wsq(GrayImage image) {
    return WsqEncoder.encode(image, WsqEncoding.standard(500));
  }

  /** An uncompressed print of 500 ppi. */
  public static RecordDraft record(int position, GrayImage image) {
    return record(position, image, image.toArray(), "NONE", "500");
  }

  public static RecordDraft record(
      int position, GrayImage size, byte[] data, String compression, String ppi) {
    RecordDraft changed =
        SampleCard.taggedPrint(position, position, position <= 10 ? 1 : 0)
            .with(6, Integer.toString(size.width()))
            .with(7, Integer.toString(size.height()))
            .with(9, ppi)
            .with(10, ppi)
            .with(11, compression)
            .without(999);
    List<FieldDraft> fields = new ArrayList<>(changed.fields());
    fields.add(FieldDraft.data(new FieldNumber(14, 999), ByteSource.of(data)));
    return RecordDraft.tagged(14, fields);
  }

  /** The conforming card with every print replaced. */
  public static SampleCard card(GrayImage image, String ppi) {
    SampleCard card = SampleCard.rolledTagged();
    for (int position = 1; position <= 14; position++) {
      int at = position;
      card = card.with(position + 2, old -> record(at, image, image.toArray(), "NONE", ppi));
    }
    return card;
  }

  /** The conforming card with the right thumb replaced. */
  public static SampleCard withThumb(RecordDraft thumb) {
    return SampleCard.rolledTagged().with(3, old -> thumb);
  }

  public static SampleCard withThumb(GrayImage image) {
    return withThumb(record(1, image));
  }
}
