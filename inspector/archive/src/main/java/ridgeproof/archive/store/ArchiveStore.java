package ridgeproof.archive.store;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.apache.hadoop.conf.Configuration;
import org.apache.hadoop.fs.FSDataOutputStream;
import org.apache.hadoop.fs.FileContext;
import org.apache.hadoop.fs.FileStatus;
import org.apache.hadoop.fs.FileSystem;
import org.apache.hadoop.fs.LocatedFileStatus;
import org.apache.hadoop.fs.Options;
import org.apache.hadoop.fs.Path;
import org.apache.hadoop.fs.RemoteIterator;
import ridgeproof.archive.local.ArchiveFileSystem;

/**
 * The folder of an archive. A batch is written to a staging folder; it is committed by the rename
 * of a list of its files into the log; then its files move into the tables. A run that begins
 * finishes the moves of a committed batch and removes what was not committed.
 */
public final class ArchiveStore {

  private static final String SETTINGS = "_archive.txt";
  private static final String WRITER = "_writer.txt";
  private static final String LOG = "_commits";
  private static final String STAGING = "_staging";
  private static final String DATA = ".parquet";

  private final FileSystem system;
  private final FileContext context;
  private final Path root;
  private final String writer = UUID.randomUUID().toString();
  private int lastBatch;

  private ArchiveStore(FileSystem system, Path root, Configuration configuration)
      throws IOException {
    this.system = system;
    this.root = root;
    this.context = ArchiveFileSystem.context(root.toUri(), configuration);
  }

  /**
   * Opens an archive to write to, makes it if need be, and brings it in order.
   *
   * @param settings lines that the rows of an archive have in common
   * @throws ArchiveError if it was begun with other settings
   */
  public static ArchiveStore openToWrite(Path root, String settings, Configuration configuration)
      throws IOException {
    ArchiveStore store =
        new ArchiveStore(ArchiveFileSystem.of(root, configuration), root, configuration);
    store.system.mkdirs(root);
    store.agreeOn(settings);
    store.system.mkdirs(store.at(LOG));
    store.system.mkdirs(store.at(STAGING));
    for (ArchiveTable table : ArchiveTable.values()) {
      store.system.mkdirs(store.table(table));
    }
    store.write(store.at(WRITER), store.writer, true);
    store.bringInOrder();
    return store;
  }

  /** Whether an archive is there. */
  public static boolean exists(Path root, Configuration configuration) throws IOException {
    return ArchiveFileSystem.of(root, configuration).exists(new Path(root, SETTINGS));
  }

  /** The folder of a table. */
  public Path table(ArchiveTable table) {
    return at(table.folder());
  }

  /**
   * Where the next batch is to be written: a folder for each table, and others as need be. Its name
   * is no other batch's.
   */
  public Path stage() throws IOException {
    Path folder = new Path(at(STAGING), name(lastBatch + 1));
    system.delete(folder, true);
    system.mkdirs(folder);
    return folder;
  }

  /**
   * Makes the staged batch a part of the archive: all of it or nothing.
   *
   * @param files of tables, with their paths below the staging folder; others there are dropped
   */
  public void commit(List<String> files) throws IOException {
    if (!text(at(WRITER)).equals(writer)) {
      throw new ArchiveError(
          "another run has begun to write to this archive; this one stops and its last batch is not"
              + " committed");
    }
    String batch = name(lastBatch + 1);
    Path staged = new Path(at(STAGING), batch);
    if (files.isEmpty()) {
      system.delete(staged, true);
      return;
    }
    Path draft = new Path(staged, "log.txt");
    write(draft, String.join("\n", files) + "\n", false);
    context.rename(draft, new Path(at(LOG), batch + ".txt"), Options.Rename.NONE);
    lastBatch++;
    finish(batch);
  }

  private void agreeOn(String settings) throws IOException {
    Path file = at(SETTINGS);
    Optional<String> found = textIfThere(file);
    if (found.isEmpty()) {
      if (system.listStatus(root).length > 0) {
        throw new ArchiveError("the output folder is not empty and holds no archive");
      }
      Path draft = at("_archive.draft");
      write(draft, settings, true);
      context.rename(draft, file, Options.Rename.OVERWRITE);
    } else if (!found.get().equals(settings)) {
      throw new ArchiveError(
          "this archive was begun with other settings, or with another key.\n  archive: "
              + found.get().strip().replace("\n", ", ")
              + "\n  this run: "
              + settings.strip().replace("\n", ", "));
    }
  }

  private void bringInOrder() throws IOException {
    for (FileStatus commit : system.listStatus(at(LOG))) {
      lastBatch = Math.max(lastBatch, number(commit.getPath().getName()));
    }
    for (FileStatus staged : system.listStatus(at(STAGING))) {
      String batch = staged.getPath().getName();
      if (system.exists(new Path(at(LOG), batch + ".txt"))) {
        finish(batch);
      } else {
        system.delete(staged.getPath(), true);
      }
    }
  }

  /** Moves the files of a committed batch; those that were moved before are there already. */
  private void finish(String batch) throws IOException {
    Path staged = new Path(at(STAGING), batch);
    for (String file : text(new Path(at(LOG), batch + ".txt")).lines().toList()) {
      Path from = new Path(staged, file);
      Path to = new Path(root, file);
      if (system.exists(from)) {
        system.mkdirs(to.getParent());
        context.rename(from, to, Options.Rename.NONE);
      } else if (!system.exists(to)) {
        throw new ArchiveError("the archive is damaged: " + file + " of a committed batch is gone");
      }
    }
    system.delete(staged, true);
  }

  /** The files of a table that are committed. */
  public List<DataFile> data(ArchiveTable table) throws IOException {
    List<DataFile> files = new ArrayList<>();
    RemoteIterator<LocatedFileStatus> found = system.listFiles(table(table), true);
    while (found.hasNext()) {
      Path path = found.next().getPath();
      if (path.getName().endsWith(DATA)
          && !path.getName().startsWith(".")
          && !path.getName().startsWith("_")) {
        files.add(new DataFile(table, path.toString()));
      }
    }
    return files;
  }

  private Path at(String name) {
    return new Path(root, name);
  }

  private static String name(int batch) {
    return String.format(Locale.ROOT, "%08d", batch);
  }

  private static int number(String name) {
    String digits = name.replaceFirst("\\..*", "");
    return digits.matches("[0-9]{8}") ? Integer.parseInt(digits) : 0;
  }

  private void write(Path file, String text, boolean overwrite) throws IOException {
    try (FSDataOutputStream out = system.create(file, overwrite)) {
      out.write(text.getBytes(StandardCharsets.UTF_8));
      out.hsync();
    }
  }

  private Optional<String> textIfThere(Path file) {
    try {
      return Optional.of(text(file));
    } catch (FileNotFoundException e) {
      return Optional.empty();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private String text(Path file) throws IOException {
    try (InputStream in = system.open(file)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
