package ridgeproof.imagery.header;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import ridgeproof.imagery.ImageDefect;
import ridgeproof.imagery.ImageHeader;
import ridgeproof.imagery.ImageSamples;
import ridgeproof.transaction.record.ByteSource;

class DamagedHeaderTest {

  private static final int FLIPS = 5_000;

  @TestFactory
  Stream<DynamicTest> everyTruncationEndsInAHeaderWithoutDefectsOutsideTheFile() {
    return ImageSamples.all().entrySet().stream()
        .map(
            sample ->
                DynamicTest.dynamicTest(
                    sample.getKey(),
                    () -> {
                      for (int length = 0; length < sample.getValue().length; length++) {
                        check(Arrays.copyOf(sample.getValue(), length));
                      }
                    }));
  }

  @TestFactory
  Stream<DynamicTest> everyTruncatedCodestreamIsDamaged() {
    return ImageSamples.all().entrySet().stream()
        .map(
            sample ->
                DynamicTest.dynamicTest(
                    sample.getKey(),
                    () -> {
                      for (int length = 12; length < sample.getValue().length; length++) {
                        byte[] cut = Arrays.copyOf(sample.getValue(), length);
                        assertTrue(
                            ImageHeaders.read(ByteSource.of(cut)).defects().stream()
                                .anyMatch(defect -> defect.kind() == ImageDefect.Kind.DAMAGE),
                            "cut to " + length + " bytes");
                      }
                    }));
  }

  @TestFactory
  Stream<DynamicTest> everyFlippedByteEndsInAHeaderWithoutDefectsOutsideTheFile() {
    return ImageSamples.all().entrySet().stream()
        .map(sample -> DynamicTest.dynamicTest(sample.getKey(), () -> flip(sample)));
  }

  private static void flip(Map.Entry<String, byte[]> sample) {
    Random random = new Random(20_260_101);
    for (int i = 0; i < FLIPS; i++) {
      byte[] file = sample.getValue().clone();
      // Half of the flips in the headers, which small files have at the front.
      int reach = i % 2 == 0 ? file.length : Math.min(file.length, 200);
      file[random.nextInt(reach)] = (byte) random.nextInt(256);
      check(file);
    }
  }

  private static void check(byte[] file) {
    ImageHeader header = ImageHeaders.read(ByteSource.of(file));
    assertTrue(header.width() >= 0 && header.height() >= 0 && header.bitsPerPixel() >= 0);
    assertTrue(header.extent().end() <= file.length);
    for (ImageDefect defect : header.defects()) {
      assertTrue(defect.offset() >= 0 && defect.offset() <= file.length, defect.toString());
    }
  }
}
