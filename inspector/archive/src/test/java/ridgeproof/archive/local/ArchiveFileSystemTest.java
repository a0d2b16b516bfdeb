package ridgeproof.archive.local;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.stream.Stream;
import org.apache.hadoop.conf.Configuration;
import org.apache.hadoop.fs.FileAlreadyExistsException;
import org.apache.hadoop.fs.FileContext;
import org.apache.hadoop.fs.FileSystem;
import org.apache.hadoop.fs.Options;
import org.apache.hadoop.fs.permission.FsPermission;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ArchiveFileSystemTest {

  private final Configuration configuration = new Configuration(false);

  @TempDir Path folder;

  @Test
  void whatIsWrittenIsReadAgainAndStandsAlone() throws IOException {
    Path file = folder.resolve("Zoë 1.txt");
    try (OutputStream out = system().create(address(file), false)) {
      out.write("rows".getBytes(UTF_8));
    }
    try (InputStream in = ArchiveFileSystem.open(address(file), configuration)) {
      assertArrayEquals("rows".getBytes(UTF_8), in.readAllBytes());
    }
    try (Stream<Path> files = Files.list(folder)) {
      assertEquals(List.of(file), files.toList(), "no file of a check sum beside it");
    }
  }

  @ParameterizedTest
  @CsvSource({"600, rw-------", "644, rw-r--r--", "751, rwxr-x--x", "000, ---------"})
  @DisabledOnOs(OS.WINDOWS)
  void rightsAreThoseThatWereAskedFor(String mode, String rights) throws IOException {
    Path file = Files.createFile(folder.resolve("file"));
    system().setPermission(address(file), new FsPermission(mode));
    assertEquals(rights, PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void aNewFileHasTheRightsThatTheMaskOfTheConfigurationLeaves() throws IOException {
    configuration.set("fs.permissions.umask-mode", "027");
    Path file = folder.resolve("file");
    system().create(address(file)).close();
    assertEquals("rw-r-----", PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
  }

  @Test
  void aRenameMovesAFileAndReplacesNone() throws IOException {
    FileContext context = ArchiveFileSystem.context(URI.create("file:///"), configuration);
    Path draft = Files.writeString(folder.resolve("draft"), "new");
    Path taken = Files.writeString(folder.resolve("taken"), "old");
    assertThrows(
        FileAlreadyExistsException.class,
        () -> context.rename(address(draft), address(taken), Options.Rename.NONE));
    assertEquals("old", Files.readString(taken));
    context.rename(address(draft), address(folder.resolve("moved")), Options.Rename.NONE);
    assertEquals("new", Files.readString(folder.resolve("moved")));
    assertTrue(Files.notExists(draft));
  }

  @Test
  void anotherFileSystemIsTheOneOfItsConnector() {
    assertThrows(
        IOException.class,
        () ->
            ArchiveFileSystem.of(
                new org.apache.hadoop.fs.Path("unknown://host/archive"), configuration));
  }

  private FileSystem system() throws IOException {
    return ArchiveFileSystem.of(address(folder), configuration);
  }

  private static org.apache.hadoop.fs.Path address(Path path) {
    return new org.apache.hadoop.fs.Path(path.toUri());
  }
}
