package ridgeproof.imagery.codec;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.Arrays;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.TestFactory;
import ridgeproof.imagery.Decoding;
import ridgeproof.imagery.DecodingLimits;
import ridgeproof.imagery.ImageCodec.StatedSize;
import ridgeproof.imagery.ImageHeader;
import ridgeproof.imagery.ImageSamples;
import ridgeproof.imagery.header.ImageHeaders;
import ridgeproof.transaction.record.ByteSource;

@Tag("slow")
class DamagedImageTest {

  private static final int FLIPS = 250;

  /** The header tests cut at every byte; decoding is slower. */
  private static final int STEP = 13;

  /** Small enough that no flipped size costs memory or time. */
  private static final DecodingLimits LIMITS = new DecodingLimits(300_000, Duration.ofSeconds(10));

  private static final StatedSize STATED =
      new StatedSize(ImageSamples.WIDTH, ImageSamples.HEIGHT, 8);

  @TestFactory
  Stream<DynamicTest> everyTruncationEndsInAnImageOrADefect() {
    return ImageSamples.all().entrySet().stream()
        .map(
            sample ->
                DynamicTest.dynamicTest(
                    sample.getKey(),
                    () -> {
                      byte[] file = sample.getValue();
                      for (int length = 0; length < file.length; length += STEP) {
                        decode(Arrays.copyOf(file, length));
                      }
                    }));
  }

  @TestFactory
  Stream<DynamicTest> everyFlippedByteEndsInAnImageOrADefect() {
    return ImageSamples.all().entrySet().stream()
        .map(
            sample ->
                DynamicTest.dynamicTest(
                    sample.getKey(),
                    () -> {
                      Random random = new Random(20_260_102);
                      for (int i = 0; i < FLIPS; i++) {
                        byte[] file = sample.getValue().clone();
                        int reach = i % 2 == 0 ? file.length : Math.min(file.length, 200);
                        file[random.nextInt(reach)] = (byte) random.nextInt(256);
                        decode(file);
                      }
                    }));
  }

  private static void decode(byte[] file) {
    ByteSource source = ByteSource.of(file);
    ImageHeader header = ImageHeaders.read(source);
    Decoding decoding = ImageCodecs.standard().decode(source, header, STATED, LIMITS);
    assertTrue(decoding.image().isPresent() || !decoding.defects().isEmpty());
    assertTrue(
        decoding.defects().stream()
            .allMatch(defect -> defect.offset() >= 0 && defect.offset() <= file.length));
  }
}
