package ridgeproof.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/**
 * Standard output and error.
 *
 * @param terminal whether a person is looking
 */
record Console(PrintStream out, PrintStream error, boolean colour, boolean terminal) {

  Console(PrintStream out, PrintStream error, boolean colour) {
    this(out, error, colour, false);
  }

  static Console system() {
    boolean terminal = isTerminal(System.console());
    boolean wanted = System.getenv("NO_COLOR") == null && !"dumb".equals(System.getenv("TERM"));
    return new Console(
        stream(FileDescriptor.out), stream(FileDescriptor.err), terminal && wanted, terminal);
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

  void print(String text) {
    out.print(text);
    if (!text.endsWith("\n")) {
      out.println();
    }
    if (out.checkError()) {
      throw CommandFailure.inputOutput("cannot write to standard output");
    }
  }

  void print(byte[] bytes) {
    out.write(bytes, 0, bytes.length);
    if (out.checkError()) {
      throw CommandFailure.inputOutput("cannot write to standard output");
    }
  }
}
