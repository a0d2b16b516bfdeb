import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Enumeration;
import java.util.List;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Lays the license texts and notices that the libraries carry beside each other, a folder for each
 * library: {@code java LicenseTexts.java FOLDER-OF-JARS FOLDER-OF-TEXTS}.
 */
public final class LicenseTexts {

  private static final Pattern TEXT =
      Pattern.compile("(?i)(?:.*/)?((?:LICEN[CS]ES?|NOTICE|COPYING)[-.\\w]*)");

  private LicenseTexts() {}

  public static void main(String[] folders) throws IOException {
    List<Path> jars;
    try (Stream<Path> found = Files.list(Path.of(folders[0]))) {
      jars = found.filter(path -> path.toString().endsWith(".jar")).sorted().toList();
    }
    for (Path jar : jars) {
      try (JarFile library = new JarFile(jar.toFile())) {
        String name = jar.getFileName().toString().replaceFirst("\\.jar$", "");
        extract(library, Path.of(folders[1], name));
      }
    }
  }

  private static void extract(JarFile library, Path folder) throws IOException {
    for (Enumeration<JarEntry> all = library.entries(); all.hasMoreElements(); ) {
      JarEntry entry = all.nextElement();
      if (!entry.isDirectory()
          && !entry.getName().endsWith(".class")
          && TEXT.matcher(entry.getName()).matches()) {
        String flat = entry.getName().replaceFirst("^META-INF/", "").replace('/', '_');
        Files.createDirectories(folder);
        try (InputStream text = library.getInputStream(entry)) {
          Files.write(folder.resolve(flat), text.readAllBytes());
        }
      }
    }
  }
}
