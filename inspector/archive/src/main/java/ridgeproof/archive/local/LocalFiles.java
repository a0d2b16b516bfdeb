package ridgeproof.archive.local;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.attribute.PosixFilePermission;
import java.util.EnumSet;
import java.util.Set;
import org.apache.hadoop.conf.Configuration;
import org.apache.hadoop.fs.FileStatus;
import org.apache.hadoop.fs.Path;
import org.apache.hadoop.fs.RawLocalFileSystem;
import org.apache.hadoop.fs.permission.FsPermission;

/**
 * The files of this machine. Without its native library Hadoop starts a process for the rights of
 * each file it makes and for each name it renames, which takes longer than the examination of a
 * file.
 */
final class LocalFiles extends RawLocalFileSystem {

  static final URI ROOT = URI.create("file:///");

  private LocalFiles() {}

  static LocalFiles open(Configuration configuration) throws IOException {
    LocalFiles files = new LocalFiles();
    files.initialize(ROOT, configuration);
    return files;
  }

  @Override
  public void setPermission(Path path, FsPermission permission) throws IOException {
    java.nio.file.Path file = pathToFile(path).toPath();
    boolean plain = !permission.getStickyBit();
    if (plain && file.getFileSystem().supportedFileAttributeViews().contains("posix")) {
      Files.setPosixFilePermissions(file, rights(permission.toShort()));
    } else {
      super.setPermission(path, permission);
    }
  }

  /** A link is what it points to, as Hadoop has it when its process fails on an address. */
  @Override
  public FileStatus getFileLinkStatus(Path path) throws IOException {
    return getFileStatus(path);
  }

  /** The nine bits of a mode begin with the owner's right to read, as the constants do. */
  private static Set<PosixFilePermission> rights(int mode) {
    PosixFilePermission[] all = PosixFilePermission.values();
    Set<PosixFilePermission> rights = EnumSet.noneOf(PosixFilePermission.class);
    for (PosixFilePermission right : all) {
      if ((mode >> (all.length - 1 - right.ordinal()) & 1) == 1) {
        rights.add(right);
      }
    }
    return rights;
  }
}
