package ridgeproof.imagery.codec;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Optional;
import java.util.Set;
import ridgeproof.imagery.Decoding;
import ridgeproof.imagery.DecodingLimits;
import ridgeproof.imagery.ImageCodec;
import ridgeproof.imagery.ImageDefect;
import ridgeproof.imagery.ImageFormat;
import ridgeproof.imagery.header.ImageHeaders;
import ridgeproof.transaction.record.ByteSource;

/**
 * CCITT Group 4 facsimile (ITU-T T.6), in a TIFF file or as coded data alone, by the JDK's TIFF
 * reader.
 */
public final class Group4Codec implements ImageCodec {

  private static final int SHORT = 3;
  private static final int LONG = 4;

  @Override
  public Set<ImageFormat> formats() {
    return Set.of(ImageFormat.TIFF);
  }

  @Override
  public Decoding decode(ByteSource codestream, StatedSize stated, DecodingLimits limits) {
    if (ImageHeaders.formatOf(codestream) == ImageFormat.TIFF) {
      return ImageIoDecoder.run(codestream, warnings -> JdkImageReaders.open("tiff"), limits);
    }
    if (codestream.isEmpty() || stated.width() < 1 || stated.height() < 1) {
      return Decoding.failed(
          new ImageDefect(
              ImageDefect.Kind.DAMAGE, codestream.origin(), "no coded data or no stated size"));
    }
    Optional<ImageDefect> refusal =
        ImageSizeGuard.refusal(stated.width(), stated.height(), codestream.origin(), limits);
    if (refusal.isPresent()) {
      return Decoding.failed(refusal.get());
    }
    return inFile(
        ImageIoDecoder.run(
            ByteSource.of(wrapped(codestream, stated)),
            warnings -> JdkImageReaders.open("tiff"),
            limits),
        codestream);
  }

  /** A TIFF 6.0 file of one strip around the coded data. */
  private static byte[] wrapped(ByteSource coded, StatedSize size) {
    int[][] tags = {
      {256, LONG, size.width()},
      {257, LONG, size.height()},
      {258, SHORT, 1},
      {259, SHORT, 4},
      {262, SHORT, 0},
      {273, LONG, 0},
      {277, SHORT, 1},
      {278, LONG, size.height()},
      {279, LONG, coded.length()},
    };
    int directoryBytes = 2 + 12 * tags.length + 4;
    int start = 8 + directoryBytes;
    ByteBuffer file = ByteBuffer.allocate(start + coded.length()).order(ByteOrder.LITTLE_ENDIAN);
    file.put((byte) 'I').put((byte) 'I').putShort((short) 42).putInt(8);
    file.putShort((short) tags.length);
    for (int[] tag : tags) {
      file.putShort((short) tag[0]).putShort((short) tag[1]).putInt(1);
      file.putInt(tag[0] == 273 ? start : tag[2]);
    }
    file.putInt(0).put(coded.asBuffer());
    return file.array();
  }

  /** Defects of the wrapping file, told of the file that the coded data came from. */
  private static Decoding inFile(Decoding decoding, ByteSource coded) {
    return new Decoding(
        decoding.image(),
        decoding.defects().stream()
            .map(defect -> new ImageDefect(defect.kind(), coded.origin(), defect.detail()))
            .toList());
  }
}
