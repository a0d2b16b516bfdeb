package ridgeproof.cli.io;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import ridgeproof.spec.SpecTables;

/**
 * Divides the files of a folder into transactions, which are examined, and others, each with why it
 * is none. A damaged or empty export is a transaction too: by the tag at its beginning, by the end
 * of its name, or by that of another transaction beside it.
 */
final class FolderContents extends SimpleFileVisitor<Path> {

  private final TransactionSigns signs;
  private final List<Path> transactions = new ArrayList<>();
  private final List<Inputs.LeftOut> others = new ArrayList<>();
  private final List<Path> empty = new ArrayList<>();
  private final Set<String> extensions = new HashSet<>();

  private FolderContents(SpecTables tables) {
    this.signs = new TransactionSigns(tables);
  }

  /** Every file below the folder, in the order of their names. */
  static Inputs of(Path folder, SpecTables tables) throws IOException {
    FolderContents contents = new FolderContents(tables);
    Files.walkFileTree(folder, contents);
    for (Path file : contents.empty) {
      if (contents.extensions.contains(TransactionSigns.extension(file.getFileName().toString()))) {
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
      bytes = in.readNBytes(TransactionSigns.SAMPLE);
    } catch (IOException e) {
      transactions.add(file); // so that the failure is told when the file is opened
      return;
    }
    String name = file.getFileName().toString();
    Optional<String> reason = signs.whyNot(name, bytes);
    if (signs.opens(bytes)) {
      extensions.add(TransactionSigns.extension(name));
    }
    if (reason.isEmpty()) {
      transactions.add(file);
    } else if (reason.get().equals(TransactionSigns.EMPTY)) {
      empty.add(file);
    } else {
      leaveOut(file, reason.get());
    }
  }

  private void leaveOut(Path file, String reason) {
    others.add(new Inputs.LeftOut(file, reason));
  }
}
