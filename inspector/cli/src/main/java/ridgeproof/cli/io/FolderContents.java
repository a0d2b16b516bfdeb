package ridgeproof.cli.io;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.submission.FolderTables;
import ridgeproof.transaction.reader.FileTypeSniffer;
import ridgeproof.transaction.record.ByteSource;

/**
 * Divides the files of a folder into transactions, which are examined, and others, each with why it
 * is none. A damaged or empty export is a transaction too: by the tag at its beginning, by the end
 * of its name, or by that of another transaction beside it.
 */
final class FolderContents extends SimpleFileVisitor<Path> {

  private static final int SAMPLE = 4096;

  private static final Pattern OPENING = Pattern.compile("1\\.0*1:");

  /** The first tag below some lines of a mail, in Base64, or in EBCDIC. */
  private static final Pattern BURIED =
      Pattern.compile("(?<![0-9.])1\\.0{0,2}1:|^MS4wMDE6|^\u00F1K\u00F0\u00F0\u00F1z");

  private final SpecTables tables;
  private final FolderTables names = new FolderTables();
  private final List<Path> transactions = new ArrayList<>();
  private final List<Inputs.LeftOut> others = new ArrayList<>();
  private final List<Path> empty = new ArrayList<>();
  private final Set<String> extensions = new HashSet<>();

  private FolderContents(SpecTables tables) {
    this.tables = tables;
  }

  /** Every file below the folder, in the order of their names. */
  static Inputs of(Path folder, SpecTables tables) throws IOException {
    FolderContents contents = new FolderContents(tables);
    Files.walkFileTree(folder, contents);
    for (Path file : contents.empty) {
      if (contents.extensions.contains(extension(file))) {
        contents.transactions.add(file);
      } else {
        contents.leaveOut(file, "empty");
      }
    }
    contents.transactions.sort(null);
    contents.others.sort(Comparator.comparing(Inputs.LeftOut::path));
    return new Inputs(contents.transactions, contents.others);
  }

  @Override
  public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
    // A link is followed to a file, never to a folder, which could lead round in a circle.
    if (attributes.isSymbolicLink() && Files.isDirectory(file)) {
      leaveOut(file, "a link to a folder, which is not followed");
    } else if (!Files.exists(file)) {
      leaveOut(file, "a broken link");
    } else if (!Files.isRegularFile(file)) {
      leaveOut(file, "a pipe or device");
    } else {
      classify(file);
    }
    return FileVisitResult.CONTINUE;
  }

  @Override
  public FileVisitResult visitFileFailed(Path file, IOException failure) {
    transactions.add(file); // so that the failure is told when the file is opened
    return FileVisitResult.CONTINUE;
  }

  private void classify(Path file) {
    byte[] bytes;
    try (InputStream in = Files.newInputStream(file)) {
      bytes = in.readNBytes(SAMPLE);
    } catch (IOException e) {
      transactions.add(file); // so that the failure is told when the file is opened
      return;
    }
    String sample = new String(bytes, StandardCharsets.ISO_8859_1);
    Optional<String> system = names.systemFile(file.getFileName().toString());
    if (OPENING.matcher(sample).lookingAt()) {
      extensions.add(extension(file));
      transactions.add(file);
    } else if (system.isPresent()) {
      leaveOut(file, system.get());
    } else if (names.isTransactionExtension(extension(file)) || isBuried(sample)) {
      transactions.add(file);
    } else if (bytes.length == 0) {
      empty.add(file);
    } else {
      leaveOut(
          file,
          "not a transaction: looks like " + FileTypeSniffer.of(ByteSource.of(bytes), tables));
    }
  }

  /** Text of 16-bit characters has a zero byte between any two letters. */
  private static boolean isBuried(String sample) {
    return BURIED.matcher(sample.replace("\0", "")).find();
  }

  private void leaveOut(Path file, String reason) {
    others.add(new Inputs.LeftOut(file, reason));
  }

  private static String extension(Path file) {
    String name = file.getFileName().toString();
    return name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
  }
}
