package ridgeproof.imagery.codec;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.ImageHeader;
import ridgeproof.imagery.ImageSamples;
import ridgeproof.imagery.PixelDensity;
import ridgeproof.imagery.header.ImageHeaders;
import ridgeproof.transaction.record.ByteSource;

class PngWriterTest {

  private static byte[] written(GrayImage image, Optional<PixelDensity> density)
      throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PngWriter.write(image, density, out);
    return out.toByteArray();
  }

  private static void assertReadBack(GrayImage image) throws IOException {
    BufferedImage read = ImageIO.read(new ByteArrayInputStream(written(image, Optional.empty())));
    assertEquals(BufferedImage.TYPE_BYTE_GRAY, read.getType());
    assertArrayEquals(
        image.toArray(),
        (byte[]) read.getRaster().getDataElements(0, 0, image.width(), image.height(), null));
  }

  @Test
  void anotherReaderGivesBackEveryPixel() throws IOException {
    assertReadBack(ImageSamples.grayImage());
  }

  @Property(tries = 100)
  void anotherReaderGivesBackImagesOfAnySize(
      @ForAll @IntRange(min = 1, max = 70) int width,
      @ForAll @IntRange(min = 1, max = 70) int height,
      @ForAll long seed)
      throws IOException {
    byte[] pixels = new byte[width * height];
    new java.util.Random(seed).nextBytes(pixels);
    assertReadBack(GrayImage.owning(width, height, pixels));
  }

  @Test
  void densityIsWrittenInPixelsForEachMetre() throws IOException {
    byte[] file = written(ImageSamples.grayImage(), Optional.of(new PixelDensity(500, 1000)));
    ImageHeader header = ImageHeaders.read(ByteSource.of(file));
    assertEquals(List.of(), header.defects());
    assertEquals(19_685 * 0.0254, header.density().orElseThrow().horizontalPpi(), 1e-9);
    assertEquals(39_370 * 0.0254, header.density().orElseThrow().verticalPpi(), 1e-9);
  }

  @Test
  void noDensityIsWrittenWhereNoneIsKnown() throws IOException {
    byte[] file = written(ImageSamples.grayImage(), Optional.empty());
    ImageHeader header = ImageHeaders.read(ByteSource.of(file));
    assertEquals(Optional.empty(), header.density());
    assertEquals(List.of(), header.defects());
  }
}
