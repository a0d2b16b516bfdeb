package ridgeproof.corpus.finger;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.awt.image.IndexColorModel;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javax.imageio.ImageIO;
import ridgeproof.imagery.GrayImage;

/** Draws sheets of specimens, for people to judge by eye how natural they look. */
public final class SpecimenSheet {

  private static final int LEVELS = 16;

  /** Everything this light is drawn white: the noise of a bare platen would not compress. */
  private static final int BARE_PLATEN = 226;

  private static final int CAPTION = 18;
  private static final long PERSON = 20_260;

  private record Tile(String caption, GrayImage image) {}

  private SpecimenSheet() {}

  /**
   * Writes {@code patterns.png}, {@code defects.png} and {@code hands.png}.
   *
   * @param arguments the folder to write to; {@code corpus/docs} when absent
   */
  public static void main(String[] arguments) throws IOException {
    Path folder = Path.of(arguments.length > 0 ? arguments[0] : "corpus/docs");
    Files.createDirectories(folder);
    write(folder.resolve("patterns.png"), patterns(), 3);
    write(folder.resolve("defects.png"), defects(), 6);
    write(folder.resolve("hands.png"), hands(), 2);
  }

  private static List<Tile> patterns() {
    List<Tile> tiles = new ArrayList<>();
    for (PatternClass pattern : PatternClass.values()) {
      MasterFinger finger =
          MasterFinger.grow(PERSON + pattern.ordinal(), FingerDigit.LEFT_INDEX, pattern);
      ImpressionSettings settings =
          ImpressionSettings.natural(PERSON + pattern.ordinal())
              .withShift(0, 40)
              .withFrame(new FrameSize(420, 520));
      tiles.add(new Tile(inWords(pattern), Impression.plain(finger, settings).image()));
    }
    return tiles;
  }

  private static List<Tile> defects() {
    MasterFinger finger = MasterFinger.grow(PERSON, FingerDigit.RIGHT_INDEX);
    List<Tile> tiles = new ArrayList<>();
    for (CaptureDefect defect : CaptureDefect.values()) {
      for (double strength : new double[] {0.3, 0.65, 1.0}) {
        ImpressionSettings settings =
            ImpressionSettings.natural(PERSON + defect.ordinal()).withDefect(defect, strength);
        tiles.add(
            new Tile(
                inWords(defect) + " " + strength,
                halved(Impression.rolled(finger, settings).image())));
      }
    }
    return tiles;
  }

  private static List<Tile> hands() {
    Map<FingerDigit, MasterFinger> fingers = new EnumMap<>(FingerDigit.class);
    for (FingerDigit digit : FingerDigit.values()) {
      fingers.put(digit, MasterFinger.grow(PERSON, digit));
    }
    List<MasterFinger> right = Hand.RIGHT.slapOrder().stream().map(fingers::get).toList();
    List<MasterFinger> left = Hand.LEFT.slapOrder().stream().map(fingers::get).toList();
    ImpressionSettings natural = ImpressionSettings.natural(PERSON);
    return List.of(
        new Tile("right four", halved(Slap.fourFingers(right, Hand.RIGHT, natural).image())),
        new Tile(
            "left four, turned 40 degrees",
            halved(Slap.fourFingers(left, Hand.LEFT, natural.withRotation(40)).image())),
        new Tile(
            "two thumbs",
            halved(
                TwoThumbs.of(
                        fingers.get(FingerDigit.LEFT_THUMB),
                        fingers.get(FingerDigit.RIGHT_THUMB),
                        natural)
                    .image())),
        new Tile(
            "1000 ppi, part",
            Impression.plain(
                    fingers.get(FingerDigit.RIGHT_MIDDLE),
                    natural.withPpi(1000).withFrame(new FrameSize(250, 250)))
                .image()));
  }

  private static String inWords(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  private static GrayImage halved(GrayImage image) {
    int width = image.width() / 2;
    int height = image.height() / 2;
    byte[] pixels = new byte[width * height];
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        int sum =
            image.grayAt(2 * x, 2 * y)
                + image.grayAt(2 * x + 1, 2 * y)
                + image.grayAt(2 * x, 2 * y + 1)
                + image.grayAt(2 * x + 1, 2 * y + 1);
        pixels[y * width + x] = (byte) (sum / 4);
      }
    }
    return GrayImage.owning(width, height, pixels);
  }

  private static void write(Path file, List<Tile> tiles, int columns) throws IOException {
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
            columns * cellWidth, tops[rows], BufferedImage.TYPE_BYTE_BINARY, grayPalette());
    Graphics2D graphics = sheet.createGraphics();
    graphics.setColor(Color.WHITE);
    graphics.fillRect(0, 0, sheet.getWidth(), sheet.getHeight());
    graphics.setColor(Color.BLACK);
    graphics.setFont(new Font(Font.SANS_SERIF, Font.PLAIN, 13));
    for (int i = 0; i < tiles.size(); i++) {
      int left = i % columns * cellWidth;
      int top = tops[i / columns];
      graphics.drawString(tiles.get(i).caption(), left + 3, top + 13);
      copy(tiles.get(i).image(), sheet, left, top + CAPTION);
    }
    graphics.dispose();
    ImageIO.write(sheet, "png", file.toFile());
  }

  private static void copy(GrayImage image, BufferedImage sheet, int left, int top) {
    for (int y = 0; y < image.height(); y++) {
      for (int x = 0; x < image.width(); x++) {
        int level = Math.min(LEVELS - 1, image.grayAt(x, y) * LEVELS / BARE_PLATEN);
        sheet.getRaster().setSample(left + x, top + y, 0, level);
      }
    }
  }

  /** Few gray levels keep the sheets small. */
  private static IndexColorModel grayPalette() {
    byte[] levels = new byte[LEVELS];
    for (int i = 0; i < LEVELS; i++) {
      levels[i] = (byte) (255 * i / (LEVELS - 1));
    }
    return new IndexColorModel(4, LEVELS, levels, levels, levels);
  }
}
