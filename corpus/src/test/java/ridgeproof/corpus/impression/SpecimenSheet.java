package ridgeproof.corpus.impression;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.awt.image.IndexColorModel;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;
import ridgeproof.corpus.finger.MasterFinger;
import ridgeproof.corpus.finger.TruePatternClass;
import ridgeproof.imagery.GrayImage;
import ridgeproof.spec.layout.FingerPosition;
import ridgeproof.spec.layout.FingerPosition.Hand;

/** Draws sheets of specimens, for people to judge by eye how natural they look. */
public final class SpecimenSheet {

  /** Gray levels: ridges alone need few, blur and smears more. */
  private static final int OF_RIDGES = 4;

  private static final int OF_DEFECTS = 16;

  /** Everything this light is drawn white: the noise of a bare platen would not compress. */
  private static final int BARE_PLATEN = 226;

  private static final int CAPTION = 18;
  private static final long PERSON = 20_260;

  private record Tile(String caption, GrayImage image) {}

  private SpecimenSheet() {}

  /**
   * Writes {@code patterns.png}, {@code defects.png} and {@code hands.png}.
   *
   * @param arguments the folder to write to; {@code docs/corpus} when absent
   */
  public static void main(String[] arguments) throws IOException {
    Path folder = Path.of(arguments.length > 0 ? arguments[0] : "docs/corpus");
    Files.createDirectories(folder);
    write(folder.resolve("patterns.png"), patterns(), 3, OF_RIDGES);
    write(folder.resolve("defects.png"), defects(), 6, OF_DEFECTS);
    write(folder.resolve("hands.png"), hands(), 2, OF_RIDGES);
  }

  private static List<Tile> patterns() {
    List<Tile> tiles = new ArrayList<>();
    for (TruePatternClass pattern : TruePatternClass.values()) {
      MasterFinger finger =
          MasterFinger.grow(PERSON + pattern.ordinal(), FingerPosition.LEFT_INDEX, pattern);
      ImpressionSettings settings =
          ImpressionSettings.natural(PERSON + pattern.ordinal())
              .withShift(0, 40)
              .withFrame(new FrameSize(420, 520));
      tiles.add(new Tile(inWords(pattern), Impression.plain(finger, settings).image()));
    }
    return tiles;
  }

  private static List<Tile> defects() {
    MasterFinger finger = MasterFinger.grow(PERSON, FingerPosition.RIGHT_INDEX);
    List<Tile> tiles = new ArrayList<>();
    for (CaptureDefect defect : CaptureDefect.values()) {
      for (double strength : new double[] {0.3, 0.6, 1.0}) {
        ImpressionSettings settings =
            ImpressionSettings.natural(PERSON + defect.ordinal()).withDefect(defect, strength);
        tiles.add(
            new Tile(
                inWords(defect) + " " + strength,
                reduced(Impression.rolled(finger, settings).image(), 3)));
      }
    }
    return tiles;
  }

  private static List<Tile> hands() {
    Map<FingerPosition, MasterFinger> fingers = new EnumMap<>(FingerPosition.class);
    for (FingerPosition digit : FingerPosition.values()) {
      fingers.put(digit, MasterFinger.grow(PERSON, digit));
    }
    List<MasterFinger> right = Hand.RIGHT.slapOrder().stream().map(fingers::get).toList();
    List<MasterFinger> left = Hand.LEFT.slapOrder().stream().map(fingers::get).toList();
    ImpressionSettings natural = ImpressionSettings.natural(PERSON);
    return List.of(
        new Tile(
            "right four", reduced(SlapComposer.fourFingers(right, Hand.RIGHT, natural).image(), 2)),
        new Tile(
            "left four, turned 40 degrees",
            reduced(
                SlapComposer.fourFingers(left, Hand.LEFT, natural.withRotation(40)).image(), 2)),
        new Tile(
            "two thumbs",
            reduced(
                TwoThumbs.of(
                        fingers.get(FingerPosition.LEFT_THUMB),
                        fingers.get(FingerPosition.RIGHT_THUMB),
                        natural)
                    .image(),
                2)),
        new Tile(
            "1000 ppi, part",
            Impression.plain(
                    fingers.get(FingerPosition.RIGHT_MIDDLE),
                    natural.withPpi(1000).withFrame(new FrameSize(250, 250)))
                .image()));
  }

  private static String inWords(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** Each pixel the mean of a square of so many. */
  private static GrayImage reduced(GrayImage image, int times) {
    int width = image.width() / times;
    int height = image.height() / times;
    byte[] pixels = new byte[width * height];
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        int sum = 0;
        for (int down = 0; down < times; down++) {
          for (int right = 0; right < times; right++) {
            sum += image.grayAt(times * x + right, times * y + down);
          }
        }
        pixels[y * width + x] = (byte) (sum / (times * times));
      }
    }
    return GrayImage.owning(width, height, pixels);
  }

  private static void write(Path file, List<Tile> tiles, int columns, int levels)
      throws IOException {
    int cellWidth = tiles.stream().mapToInt(tile -> tile.image().width()).max().orElse(1) + 4;
    int rows = (tiles.size() + columns - 1) / columns;
    int[] tops = new int[rows + 1];
    for (int row = 0; row < rows; row++) {
      int tallest = 0;
      for (Tile tile : tiles.subList(row * columns, Math.min(tiles.size(), (row + 1) * columns))) {
        tallest = Math.max(tallest, tile.image().height());
      }
      tops[row + 1] = tops[row] + tallest + CAPTION;
    }
    BufferedImage sheet =
        new BufferedImage(
            columns * cellWidth, tops[rows], BufferedImage.TYPE_BYTE_BINARY, grayPalette(levels));
    Graphics2D graphics = sheet.createGraphics();
    graphics.setColor(Color.WHITE);
    graphics.fillRect(0, 0, sheet.getWidth(), sheet.getHeight());
    graphics.setColor(Color.BLACK);
    graphics.setFont(new Font(Font.SANS_SERIF, Font.PLAIN, 13));
    for (int i = 0; i < tiles.size(); i++) {
      int left = i % columns * cellWidth;
      int top = tops[i / columns];
      graphics.drawString(tiles.get(i).caption(), left + 3, top + 13);
      copy(tiles.get(i).image(), sheet, left, top + CAPTION, levels);
    }
    graphics.dispose();
    writePng(sheet, file);
  }

  private static void writePng(BufferedImage sheet, Path file) throws IOException {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("png").next();
    ImageWriteParam packed = writer.getDefaultWriteParam();
    packed.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
    packed.setCompressionQuality(0);
    try (OutputStream bytes = Files.newOutputStream(file);
        ImageOutputStream stream = ImageIO.createImageOutputStream(bytes)) {
      writer.setOutput(stream);
      writer.write(null, new IIOImage(sheet, null, null), packed);
    } finally {
      writer.dispose();
    }
  }

  private static void copy(GrayImage image, BufferedImage sheet, int left, int top, int levels) {
    for (int y = 0; y < image.height(); y++) {
      for (int x = 0; x < image.width(); x++) {
        int level = Math.min(levels - 1, image.grayAt(x, y) * levels / BARE_PLATEN);
        sheet.getRaster().setSample(left + x, top + y, 0, level);
      }
    }
  }

  /** Few gray levels keep the sheets small. */
  private static IndexColorModel grayPalette(int count) {
    byte[] levels = new byte[count];
    for (int i = 0; i < count; i++) {
      levels[i] = (byte) (255 * i / (count - 1));
    }
    return new IndexColorModel(count <= 4 ? 2 : 4, count, levels, levels, levels);
  }
}
