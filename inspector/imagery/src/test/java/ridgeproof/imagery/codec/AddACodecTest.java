package ridgeproof.imagery.codec;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ridgeproof.imagery.DecodingLimits;
import ridgeproof.imagery.ImageCodec.StatedSize;
import ridgeproof.imagery.ImageSamples;
import ridgeproof.imagery.header.ImageHeaders;
import ridgeproof.testing.ChangedFolder;
import ridgeproof.transaction.record.ByteSource;

/** A codec is added by a class, and a line in the switch of its package. */
class AddACodecTest {

  private static final String FOLDER = "ridgeproof/imagery/codec";

  @TempDir Path empty;

  /** Runs with the changed folder; decodes an image. */
  public static final class Pixels implements Function<byte[], byte[]> {

    @Override
    public byte[] apply(byte[] file) {
      ByteSource source = ByteSource.of(file);
      return ImageCodecs.standard()
          .decode(
              source, ImageHeaders.read(source), new StatedSize(0, 0, 8), DecodingLimits.standard())
          .image()
          .orElseThrow()
          .toArray();
    }
  }

  @Test
  void oneFolderIsEnough() throws Exception {
    byte[] file = ImageSamples.all().get("gray.png");
    ChangedFolder folder =
        ChangedFolder.of(Path.of("src/main/java"), FOLDER, empty)
            .add(Path.of("src/test/java", FOLDER, "SampleCodec.java"))
            .insert("ImageCodecs.java", "case PNG -> new ", "SampleCodec();\n      //")
            .compiled();
    assertArrayEquals(new byte[] {7, 9}, folder.run(Pixels.class, file));
    assertEquals(ImageSamples.WIDTH * ImageSamples.HEIGHT, new Pixels().apply(file).length);
  }
}
