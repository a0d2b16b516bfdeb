package ridgeproof.transaction.xml.writer;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import ridgeproof.transaction.record.ByteSource;

/** Elements as bytes, each on a line of its own. */
final class XmlOutput {

  /** A multiple of three, so that pieces of Base64 join without fill characters. */
  private static final int PIECE = 3 * 16 * 1024;

  private final OutputStream out;
  private boolean replaced;

  XmlOutput(OutputStream out) {
    this.out = out;
  }

  /** Whether a character was left out since the last call. */
  boolean takeReplaced() {
    boolean was = replaced;
    replaced = false;
    return was;
  }

  void line(int depth, String text) throws IOException {
    write("  ".repeat(depth) + text + "\n");
  }

  void branch(Branch branch, int depth) throws IOException {
    if (branch.isBlank()) {
      return;
    }
    String name = branch.element().qualified();
    if (branch.data().isPresent()) {
      write("  ".repeat(depth) + "<" + name + ">");
      base64(branch.data().get());
      write("</" + name + ">\n");
    } else if (branch.text().isPresent()) {
      line(depth, "<" + name + ">" + escaped(branch.text().get()) + "</" + name + ">");
    } else {
      line(depth, "<" + name + ">");
      for (Branch child : branch.children()) {
        branch(child, depth + 1);
      }
      line(depth, "</" + name + ">");
    }
  }

  private void base64(ByteSource bytes) throws IOException {
    for (int at = 0; at < bytes.length(); at += PIECE) {
      out.write(Base64.getEncoder().encode(bytes.slice(at, PIECE).toArray()));
    }
  }

  private String escaped(String text) {
    StringBuilder escaped = new StringBuilder(text.length());
    text.codePoints()
        .forEach(
            c -> {
              switch (c) {
                case '&' -> escaped.append("&amp;");
                case '<' -> escaped.append("&lt;");
                case '>' -> escaped.append("&gt;");
                case '\n' -> escaped.append("&#10;");
                case '\r' -> escaped.append("&#13;");
                default -> {
                  if (isAllowed(c)) {
                    escaped.appendCodePoint(c);
                  } else {
                    replaced = true;
                  }
                }
              }
            });
    return escaped.toString();
  }

  private static boolean isAllowed(int c) {
    return c == '\t' || c >= 0x20 && c <= 0xD7FF || c >= 0xE000 && c <= 0xFFFD || c >= 0x10000;
  }

  private void write(String text) throws IOException {
    out.write(text.getBytes(StandardCharsets.UTF_8));
  }
}
