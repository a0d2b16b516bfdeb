package ridgeproof.imagery.codec;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.lang.reflect.Method;
import java.net.MalformedURLException;
import java.net.URL;
import java.net.URLClassLoader;
import java.util.Arrays;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import ridgeproof.imagery.Decoding;
import ridgeproof.imagery.DecodingLimits;
import ridgeproof.imagery.ImageCodec.StatedSize;
import ridgeproof.imagery.ImageSamples;
import ridgeproof.imagery.header.ImageHeaders;
import ridgeproof.transaction.record.ByteSource;

class LazyLoadingTest {

  /** Decodes within a class loader of its own; called by reflection. */
  public static final class Decoder implements Function<byte[], Integer> {
    @Override
    public Integer apply(byte[] file) {
      ByteSource source = ByteSource.of(file);
      Decoding decoding =
          ImageCodecs.standard()
              .decode(
                  source,
                  ImageHeaders.read(source),
                  new StatedSize(2, 2, 8),
                  DecodingLimits.standard());
      return decoding.image().orElseThrow().width();
    }
  }

  private static final class Recording extends URLClassLoader {
    private final Set<String> loaded = new TreeSet<>();

    Recording() {
      super(classPath(), ClassLoader.getPlatformClassLoader());
    }

    private static URL[] classPath() {
      return Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator))
          .map(File::new)
          .map(
              file -> {
                try {
                  return file.toURI().toURL();
                } catch (MalformedURLException e) {
                  throw new IllegalStateException(e);
                }
              })
          .toArray(URL[]::new);
    }

    @Override
    protected Class<?> findClass(String name) throws ClassNotFoundException {
      Class<?> found = super.findClass(name);
      loaded.add(name);
      return found;
    }
  }

  private static Set<String> librariesLoadedFor(byte[] file, int width)
      throws IOException, ReflectiveOperationException {
    try (Recording loader = new Recording()) {
      Class<?> decoder = loader.loadClass(Decoder.class.getName());
      Method apply = decoder.getMethod("apply", byte[].class);
      assertEquals(width, apply.invoke(decoder.getConstructor().newInstance(), (Object) file));
      Set<String> libraries = new TreeSet<>();
      for (String name : loader.loaded) {
        for (String library : new String[] {"jj2000", "jaiimageio", "twelvemonkeys", "jnbis"}) {
          if (name.contains(library)) {
            libraries.add(library);
          }
        }
      }
      return libraries;
    }
  }

  @Test
  void rawPixelsNeedNoLibrary() throws Exception {
    assertEquals(Set.of(), librariesLoadedFor(new byte[] {1, 2, 3, 4}, 2));
  }

  @Test
  void pngNeedsOnlyTheJdk() throws Exception {
    assertEquals(
        Set.of(), librariesLoadedFor(ImageSamples.png(ImageSamples.gray()), ImageSamples.WIDTH));
  }

  @Test
  void jpeg2000NeedsItsOwnLibraryAlone() throws Exception {
    Set<String> libraries =
        librariesLoadedFor(ImageSamples.resource("gray-53.j2k"), ImageSamples.WIDTH);
    assertTrue(libraries.contains("jj2000"));
    assertTrue(Set.of("jj2000", "jaiimageio").containsAll(libraries), libraries.toString());
  }
}
