package ridgeproof.archive.local;

import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.nio.file.Files;
import org.apache.hadoop.conf.Configuration;
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
    return isLocal(system.getUri()) ? LocalFiles.open(configuration) : system;
  }

  /**
   * Opens a file to read.
   *
   * @throws IOException as {@link #of}, or if it cannot be read
   */
  public static InputStream open(Path path, Configuration configuration) throws IOException {
    return isLocal(path.toUri())
        ? Files.newInputStream(java.nio.file.Path.of(path.toUri().getPath()))
        : of(path, configuration).open(path);
  }

  /**
   * What renames files of an archive whole or not at all.
   *
   * @throws IOException as {@link #of}
   */
  public static FileContext context(URI root, Configuration configuration) throws IOException {
    Configuration own = new Configuration(configuration);
    own.setClass(
        CONTEXT_OF_LOCAL_FILES,
        LocalFileContext.class,
        org.apache.hadoop.fs.AbstractFileSystem.class);
    return FileContext.getFileContext(root, own);
  }

  /** Whether Java itself can open files of the address. */
  public static boolean isLocal(URI address) {
    return "file".equals(address.getScheme());
  }
}
