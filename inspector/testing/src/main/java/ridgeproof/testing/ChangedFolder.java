package ridgeproof.testing;

import java.io.File;
import java.io.IOException;
import java.net.MalformedURLException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import javax.tools.ToolProvider;

/**
 * A copy of one folder of sources or resources to which a test adds something, as a developer
 * would. What then runs is the project with this one folder changed, in classes of its own.
 */
public final class ChangedFolder {

  private final Path copy;
  private final Path root;

  private ChangedFolder(Path copy, Path root) {
    this.copy = copy;
    this.root = root;
  }

  /**
   * Copies the files of a folder, without folders in it.
   *
   * @param tree such as src/main/java
   * @param folder within the tree, such as ridgeproof/examination/rules/image
   * @param empty where the copy goes
   */
  public static ChangedFolder of(Path tree, String folder, Path empty) throws IOException {
    Path copy = Files.createDirectories(empty.resolve(folder));
    try (Stream<Path> files = Files.list(tree.resolve(folder))) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Files.copy(file, copy.resolve(file.getFileName()));
      }
    }
    return new ChangedFolder(copy, empty);
  }

  /** Adds a file. */
  public ChangedFolder add(Path file) throws IOException {
    Files.copy(file, copy.resolve(file.getFileName()));
    return this;
  }

  /** Adds a file with this text. */
  public ChangedFolder add(String name, String text) throws IOException {
    Files.writeString(copy.resolve(name), text);
    return this;
  }

  /** Adds text behind other text, which the file has to hold. */
  public ChangedFolder insert(String name, String behind, String text) throws IOException {
    Path file = copy.resolve(name);
    String before = Files.readString(file, StandardCharsets.UTF_8);
    int at = before.indexOf(behind);
    if (at < 0) {
      throw new IllegalArgumentException(name + " does not hold: " + behind);
    }
    int end = at + behind.length();
    Files.writeString(file, before.substring(0, end) + text + before.substring(end));
    return this;
  }

  /** Compiles the folder as it is now; every file has to compile without an error. */
  public ChangedFolder compiled() throws IOException {
    List<String> arguments =
        new ArrayList<>(
            List.of(
                "-proc:none",
                "-nowarn",
                "-parameters",
                "-d",
                root.toString(),
                "-cp",
                System.getProperty("java.class.path")));
    try (Stream<Path> files = Files.list(copy)) {
      files.map(Path::toString).filter(name -> name.endsWith(".java")).forEach(arguments::add);
    }
    int status =
        ToolProvider.getSystemJavaCompiler()
            .run(null, null, null, arguments.toArray(String[]::new));
    if (status != 0) {
      throw new IllegalStateException("the changed folder does not compile");
    }
    return this;
  }

  /**
   * Runs a function of the project with this folder changed.
   *
   * @param function a class with a public constructor without arguments, loaded anew
   */
  @SuppressWarnings("unchecked")
  public <T, R> R run(Class<? extends Function<T, R>> function, T argument) throws Exception {
    try (URLClassLoader loader =
        new URLClassLoader(classPath(), ClassLoader.getPlatformClassLoader())) {
      Object made = loader.loadClass(function.getName()).getDeclaredConstructor().newInstance();
      return ((Function<T, R>) made).apply(argument);
    }
  }

  private URL[] classPath() throws MalformedURLException {
    List<URL> places = new ArrayList<>(List.of(root.toUri().toURL()));
    for (String entry : System.getProperty("java.class.path").split(File.pathSeparator)) {
      places.add(Path.of(entry).toUri().toURL());
    }
    return places.toArray(URL[]::new);
  }
}
