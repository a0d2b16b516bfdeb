package ridgeproof.archive.local;

import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.nio.file.Files;
import org.apache.hadoop.conf.Configuration;
import org.apache.hadoop.fs.AbstractFileSystem;
import org.apache.hadoop.fs.FileContext;
import org.apache.hadoop.fs.FileSystem;
import org.apache.hadoop.fs.Path;

/** Tells the file system of an address. */
public final class ArchiveFileSystem {

  private static final String CONTEXT_OF_LOCAL_FILES = "fs.AbstractFileSystem.file.impl";

  private ArchiveFileSystem() {}

  /**
   * The file system of an address.
   *
   * @throws IOException if it cannot be reached, or no connector is there for it
   */
  public static FileSystem of(Path path, Configuration configuration) throws IOException {
    FileSystem system = path.getFileSystem(configuration);
    return isLocal(new Path(system.getUri())) ? LocalFiles.open(configuration) : system;
  }

  /**
   * Opens a file to read.
   *
   * @throws IOException as {@link #of}, or if it cannot be read
   */
  public static InputStream open(Path path, Configuration configuration) throws IOException {
    return isLocal(path) ? Files.newInputStream(local(path)) : of(path, configuration).open(path);
  }

  /**
   * What renames files of an archive whole or not at all.
   *
   * @throws IOException as {@link #of}
   */
  public static FileContext context(URI root, Configuration configuration) throws IOException {
    Configuration own = new Configuration(configuration);
    own.setClass(CONTEXT_OF_LOCAL_FILES, LocalFileContext.class, AbstractFileSystem.class);
    return FileContext.getFileContext(root, own);
  }

  /** Whether an address says that it is of this machine. */
  public static boolean isLocal(Path path) {
    return "file".equals(path.toUri().getScheme());
  }

  /** A path of this machine, as Java itself names it. */
  public static java.nio.file.Path local(Path path) {
    return java.nio.file.Path.of(path.toUri().getPath());
  }
}
