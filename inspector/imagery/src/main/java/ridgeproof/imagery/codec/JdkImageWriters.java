package ridgeproof.imagery.codec;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Iterator;
import javax.imageio.ImageWriter;
import javax.imageio.spi.IIORegistry;
import javax.imageio.spi.ImageWriterSpi;

/** The writers that the JDK itself brings, whatever plug-ins are about. */
public final class JdkImageWriters {

  private static final String JDK_PACKAGE = "com.sun.imageio.plugins.";

  private JdkImageWriters() {}

  /**
   * A writer of the JDK.
   *
   * @param format as in the JDK's own package names: jpeg, png, tiff
   */
  public static ImageWriter open(String format) {
    Iterator<ImageWriterSpi> found =
        IIORegistry.getDefaultInstance()
            .getServiceProviders(
                ImageWriterSpi.class,
                spi -> spi.getClass().getName().startsWith(JDK_PACKAGE + format + "."),
                true);
    if (!found.hasNext()) {
      throw new IllegalStateException("this Java runtime has no " + format + " writer");
    }
    try {
      return found.next().createWriterInstance();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
