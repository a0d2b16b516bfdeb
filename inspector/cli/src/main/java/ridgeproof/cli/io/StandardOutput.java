package ridgeproof.cli.io;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** Standard output that knows whether its reader has gone, as {@code head} does. */
public final class StandardOutput extends PrintStream {

  private final Pipe pipe;

  private StandardOutput(Pipe pipe) {
    super(pipe, false, StandardCharsets.UTF_8);
    this.pipe = pipe;
  }

  public static StandardOutput on(OutputStream out) {
    return new StandardOutput(new Pipe(out));
  }

  /** What a command that could not write here ends with. */
  static CommandFailure failure(PrintStream out) {
    return out instanceof StandardOutput standard && standard.isReaderGone()
        ? CommandFailure.readerGone()
        : CommandFailure.inputOutput("cannot write to standard output");
  }

  boolean isReaderGone() {
    return pipe.broken;
  }

  /** Java reports a broken pipe only in the words of the system. */
  private static final class Pipe extends FilterOutputStream {

    private boolean broken;

    Pipe(OutputStream out) {
      super(out);
    }

    @Override
    public void write(byte[] bytes, int from, int length) throws IOException {
      try {
        out.write(bytes, from, length);
      } catch (IOException e) {
        broken |= tellsOfABrokenPipe(e);
        throw e;
      }
    }

    @Override
    public void write(int value) throws IOException {
      write(new byte[] {(byte) value}, 0, 1);
    }

    private static boolean tellsOfABrokenPipe(IOException failure) {
      String words = String.valueOf(failure.getMessage()).toLowerCase(Locale.ROOT);
      return words.contains("broken pipe") || words.contains("pipe is being closed");
    }
  }
}
