package ridgeproof.imagery.codec;

import java.io.IOException;
import java.util.Iterator;
import javax.imageio.ImageReader;
import javax.imageio.spi.IIORegistry;
import javax.imageio.spi.ImageReaderSpi;

/** The readers that the JDK itself brings, whatever plug-ins are about. */
final class JdkImageReaders {

  private static final String JDK_PACKAGE = "com.sun.imageio.plugins.";

  private JdkImageReaders() {}

  /**
   * A reader of the JDK.
   *
   * @param format as in the JDK's own package names: jpeg, png, tiff
   */
  static ImageReader open(String format) throws IOException {
    Iterator<ImageReaderSpi> found =
        IIORegistry.getDefaultInstance()
            .getServiceProviders(
                ImageReaderSpi.class,
                spi -> spi.getClass().getName().startsWith(JDK_PACKAGE + format + "."),
                true);
    if (!found.hasNext()) {
      throw new IllegalStateException("this Java runtime has no " + format + " reader");
    }
    return found.next().createReaderInstance();
  }
}
