package ridgeproof.corpus.impression;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SpecimenSheetTest {

  private static final List<String> SHEETS = List.of("patterns.png", "defects.png", "hands.png");

  @TempDir Path folder;

  @Test
  void sheetsAreSmallAndShowRidgesInSeveralGrayLevels() throws IOException {
    SpecimenSheet.main(new String[] {folder.toString()});
    long bytes = 0;
    for (String sheet : SHEETS) {
      Path file = folder.resolve(sheet);
      bytes += Files.size(file);
      BufferedImage image = ImageIO.read(file.toFile());
      TreeSet<Integer> levels = new TreeSet<>();
      long dark = 0;
      for (int y = 0; y < image.getHeight(); y++) {
        for (int x = 0; x < image.getWidth(); x++) {
          int gray = image.getRGB(x, y) & 0xFF;
          levels.add(gray);
          dark += gray < 128 ? 1 : 0;
        }
      }
      assertEquals(sheet.equals("defects.png") ? 16 : 4, levels.size(), sheet);
      double share = dark / (double) (image.getWidth() * image.getHeight());
      assertTrue(share > 0.05 && share < 0.5, sheet + ": " + share);
    }
    assertTrue(bytes < 700_000, "bytes: " + bytes);
  }
}
