package ridgeproof.cli.io;

import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/** Where text goes as it is made: standard output, or a file that is in its place when whole. */
public final class ReportTarget implements Closeable {

  private final Optional<OutputFile> file;
  private final BooleanSupplier refused;
  private final Writer writer;

  private ReportTarget(Optional<OutputFile> file, BooleanSupplier refused, Writer writer) {
    this.file = file;
    this.refused = refused;
    this.writer = writer;
  }

  public static ReportTarget standardOutput(Console console) {
    return new ReportTarget(
        Optional.empty(),
        console.out()::checkError,
        new OutputStreamWriter(console.out(), StandardCharsets.UTF_8));
  }

  public static ReportTarget file(OutputFile file) {
    return new ReportTarget(
        Optional.of(file),
        () -> false,
        new OutputStreamWriter(file.stream(), StandardCharsets.UTF_8));
  }

  public Writer writer() {
    return writer;
  }

  /** Hands on what was written. */
  public void flush() throws IOException {
    writer.flush();
    if (refused.getAsBoolean()) {
      throw new IOException("standard output takes no more");
    }
  }

  /** Ends the text. */
  public void commit() throws IOException {
    flush();
    if (file.isPresent()) {
      file.get().commit();
    }
  }

  /** What to tell of text that could not be written. */
  public CommandFailure failure(IOException cause) {
    return file.map(f -> OutputFile.failure(f.target(), cause))
        .orElseGet(() -> CommandFailure.inputOutput("cannot write to standard output"));
  }

  @Override
  public void close() {
    file.ifPresent(OutputFile::close);
  }
}
