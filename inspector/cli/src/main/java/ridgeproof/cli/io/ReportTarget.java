package ridgeproof.cli.io;

import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** Where text goes as it is made: standard output, or a file that is in its place when whole. */
public final class ReportTarget implements Closeable {

  private final Optional<OutputFile> file;
  private final Optional<PrintStream> out;
  private final Writer writer;

  private ReportTarget(Optional<OutputFile> file, Optional<PrintStream> out, Writer writer) {
    this.file = file;
    this.out = out;
    this.writer = writer;
  }

  public static ReportTarget standardOutput(Console console) {
    return new ReportTarget(
        Optional.empty(),
        Optional.of(console.out()),
        new OutputStreamWriter(console.out(), StandardCharsets.UTF_8));
  }

  public static ReportTarget file(OutputFile file) {
    return new ReportTarget(
        Optional.of(file),
        Optional.empty(),
        new OutputStreamWriter(file.stream(), StandardCharsets.UTF_8));
  }

  public Writer writer() {
    return writer;
  }

  /** Hands on what was written. */
  public void flush() throws IOException {
    writer.flush();
    if (out.isPresent() && out.get().checkError()) {
      throw new IOException("standard output is closed");
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
        .orElseGet(() -> StandardOutput.failure(out.orElseThrow()));
  }

  @Override
  public void close() {
    file.ifPresent(OutputFile::close);
  }
}
