package ridgeproof.imagery.codec;

import com.github.jaiimageio.jpeg2000.impl.J2KImageReaderSpi;
import java.io.IOException;
import java.util.Collections;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import javax.imageio.ImageReader;
import jj2000.j2k.util.FacilityManager;
import jj2000.j2k.util.MsgLogger;
import ridgeproof.imagery.Decoding;
import ridgeproof.imagery.DecodingLimits;
import ridgeproof.imagery.ImageCodec;
import ridgeproof.imagery.ImageDefect;
import ridgeproof.imagery.ImageFormat;
import ridgeproof.imagery.ImageHeader;
import ridgeproof.imagery.header.ImageHeaders;
import ridgeproof.transaction.record.ByteSource;

/** JPEG 2000 Part 1 (ITU-T T.800), codestream or JP2 file, by the JJ2000 of jai-imageio. */
public final class Jpeg2000Codec implements ImageCodec {

  private static final Set<String> NEEDED = Set.of("tiles", "wavelet", "code-block");

  /**
   * JJ2000 can loop over these without reading, so that nothing stops it: a marker code in a packet
   * header, and packed packet headers (rare) that are cut off. Packets without end take its memory.
   */
  private static final Set<String> ENDLESS =
      Set.of("marker codes within coded data", "packed packet headers", "more packets than bytes");

  @Override
  public Set<ImageFormat> formats() {
    return Set.of(ImageFormat.JPEG_2000);
  }

  @Override
  public Decoding decode(ByteSource codestream, StatedSize stated, DecodingLimits limits) {
    ImageHeader header = ImageHeaders.read(codestream);
    Optional<ImageDefect> refusal = ImageSizeGuard.refusal(codestream, header, limits);
    if (refusal.isPresent()) {
      return Decoding.failed(refusal.get());
    }
    Set<String> facts = header.facts().keySet();
    if (!facts.containsAll(NEEDED) || !Collections.disjoint(facts, ENDLESS)) {
      String detail = "the structure of the codestream cannot be decoded";
      return Decoding.failed(new ImageDefect(ImageDefect.Kind.DAMAGE, codestream.origin(), detail));
    }
    return ImageIoDecoder.run(codestream, new QuietReader(), limits);
  }

  /** JJ2000, kept from writing to the console: of what it says, and of data that ends early. */
  private static final class QuietReader implements ImageIoDecoder.ReaderSource {

    /** It prints a stack trace where a code-block's data is cut off. */
    @Override
    public int padding() {
      return 1 << 20;
    }

    @Override
    public ImageReader open(Consumer<String> warnings) throws IOException {
      ImageReader reader = new J2KImageReaderSpi().createReaderInstance();
      // The reader made itself the logger of all threads, which would keep it and its input alive.
      FacilityManager.registerMsgLogger(null, new WarningLog(text -> {}));
      FacilityManager.registerMsgLogger(Thread.currentThread(), new WarningLog(warnings));
      return reader;
    }
  }

  /** Passes on what JJ2000 says of damage, which it conceals as well as it can. */
  private record WarningLog(Consumer<String> warnings) implements MsgLogger {

    @Override
    public void printmsg(int severity, String text) {
      if (severity == WARNING || severity == ERROR) {
        warnings.accept(text);
      }
    }

    @Override
    public void println(String text, int firstIndent, int indent) {
      // Help texts only.
    }

    @Override
    public void flush() {
      // Nothing is buffered.
    }
  }
}
