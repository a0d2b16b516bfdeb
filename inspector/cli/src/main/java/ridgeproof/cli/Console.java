package ridgeproof.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/** Standard output and error, and whether a person is looking. */
record Console(PrintStream out, PrintStream error, boolean colour) {

  static Console system() {
    boolean terminal = System.console() != null;
    boolean wanted = System.getenv("NO_COLOR") == null && !"dumb".equals(System.getenv("TERM"));
    return new Console(stream(FileDescriptor.out), stream(FileDescriptor.err), terminal && wanted);
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
}
