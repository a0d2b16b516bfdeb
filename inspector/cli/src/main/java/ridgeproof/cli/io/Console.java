package ridgeproof.cli.io;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import ridgeproof.report.TextSanitizer;

/**
 * Standard output and error, and whether a person is looking.
 *
 * @param terminal whether standard output is one
 * @param watched whether standard error is a terminal
 */
public record Console(
    PrintStream out, PrintStream error, boolean colour, boolean terminal, boolean watched) {

  private static final Path ERROR_OF_LINUX = Path.of("/proc/self/fd/2");

  /** No terminal. */
  public Console(PrintStream out, PrintStream error, boolean colour) {
    this(out, error, colour, false, false);
  }

  public static Console system() {
    boolean terminal = isTerminal(System.console());
    boolean wanted = System.getenv("NO_COLOR") == null && !"dumb".equals(System.getenv("TERM"));
    return new Console(
        StandardOutput.on(new FileOutputStream(FileDescriptor.out)),
        stream(FileDescriptor.err),
        terminal && wanted,
        terminal,
        isErrorATerminal(terminal));
  }

  /** Java 17 tells of standard input and output together alone; Linux tells of each stream. */
  private static boolean isErrorATerminal(boolean otherwise) {
    try {
      String device = Files.readSymbolicLink(ERROR_OF_LINUX).toString();
      return device.startsWith("/dev/pts/")
          || device.startsWith("/dev/tty")
          || device.equals("/dev/console");
    } catch (IOException | UnsupportedOperationException e) {
      return otherwise;
    }
  }

  /** From Java 22 on there is a console without a terminal too, and a method that tells. */
  private static boolean isTerminal(java.io.Console console) {
    if (console == null || Runtime.version().feature() < 22) {
      return console != null;
    }
    try {
      return (boolean) java.io.Console.class.getMethod("isTerminal").invoke(console);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("Java 22 has Console.isTerminal", e);
    }
  }

  private static PrintStream stream(FileDescriptor descriptor) {
    return new PrintStream(new FileOutputStream(descriptor), false, StandardCharsets.UTF_8);
  }

  /** Whether the reader of standard output stopped before the end, as {@code head} does. */
  public boolean isReaderGone() {
    return out instanceof StandardOutput standard && standard.isReaderGone();
  }

  public void print(String text) {
    out.print(text);
    if (!text.endsWith("\n")) {
      out.println();
    }
    if (out.checkError()) {
      throw StandardOutput.failure(out);
    }
  }

  /**
   * Tells a failure in a line of its own, also where a progress line stands. Names of files can
   * hold anything, so that they are escaped as in a report.
   */
  public void complain(String message) {
    String clear = watched ? "\r" + " ".repeat(78) + "\r" : "";
    error.println(clear + "ridgeproof: " + TextSanitizer.of(message));
    error.flush();
  }

  public void print(byte[] bytes) {
    out.write(bytes, 0, bytes.length);
    if (out.checkError()) {
      throw StandardOutput.failure(out);
    }
  }
}
