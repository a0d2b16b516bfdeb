import java.io.IOException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Opcodes;

/**
 * Puts classes of an old format into a jar that stands before their own, in a newer format: {@code
 * java -cp asm.jar NewerClasses.java JAR FOLDER LIBRARY...}, libraries by how their names in the
 * folder begin. Classes older than Java 6 are verified at each start, and left out of what a JVM
 * keeps ready; those of the command line's library take a tenth of the time of a short command. Only
 * the format changes. The library itself is shipped as its publisher made it.
 */
public final class NewerClasses {

  private static final int JAVA_6 = 50;

  private NewerClasses() {}

  public static void main(String[] arguments) throws IOException {
    Path jar = Path.of(arguments[0]);
    Map<ZipEntry, byte[]> contents = read(jar);
    int before = contents.size();
    for (String library : List.of(arguments).subList(2, arguments.length)) {
      Path found;
      try (Stream<Path> files = Files.list(Path.of(arguments[1]))) {
        found =
            files.filter(f -> f.getFileName().toString().startsWith(library)).findFirst().orElseThrow();
      }
      add(found, contents);
    }
    if (contents.size() > before) {
      write(contents, jar);
    }
  }

  private static void add(Path library, Map<ZipEntry, byte[]> contents) throws IOException {
    List<String> there = contents.keySet().stream().map(ZipEntry::getName).toList();
    try (URLClassLoader loader = new URLClassLoader(new URL[] {library.toUri().toURL()})) {
      read(library)
          .forEach(
              (entry, bytes) -> {
                boolean isClass = entry.getName().endsWith(".class");
                if (isClass && !there.contains(entry.getName()) && isOld(bytes)) {
                  contents.put(entry, newer(bytes, loader));
                }
              });
    }
  }

  private static boolean isOld(byte[] bytes) {
    return ((bytes[6] & 0xFF) << 8 | bytes[7] & 0xFF) < JAVA_6;
  }

  private static byte[] newer(byte[] bytes, ClassLoader library) {
    ClassWriter writer =
        new ClassWriter(ClassWriter.COMPUTE_FRAMES) {
          @Override
          protected ClassLoader getClassLoader() {
            return library;
          }
        };
    new ClassReader(bytes)
        .accept(
            new ClassVisitor(Opcodes.ASM9, writer) {
              @Override
              public void visit(
                  int version, int access, String name, String sign, String parent, String[] types) {
                super.visit(Opcodes.V1_8, access, name, sign, parent, types);
              }
            },
            0);
    return writer.toByteArray();
  }

  private static Map<ZipEntry, byte[]> read(Path jar) throws IOException {
    Map<ZipEntry, byte[]> contents = new LinkedHashMap<>();
    try (ZipFile zip = new ZipFile(jar.toFile())) {
      for (ZipEntry entry : Collections.list(zip.entries())) {
        contents.put(entry, zip.getInputStream(entry).readAllBytes());
      }
    }
    return contents;
  }

  private static void write(Map<ZipEntry, byte[]> contents, Path jar) throws IOException {
    Path other = jar.resolveSibling(jar.getFileName() + ".new");
    try (ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(other))) {
      for (Map.Entry<ZipEntry, byte[]> content : contents.entrySet()) {
        ZipEntry entry = new ZipEntry(content.getKey().getName());
        entry.setTimeLocal(content.getKey().getTimeLocal());
        out.putNextEntry(entry);
        out.write(content.getValue());
        out.closeEntry();
      }
    }
    Files.move(other, jar, StandardCopyOption.REPLACE_EXISTING);
  }
}
