package ridgeproof.calibration.real;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Puts a section in front of the others of a document, in place of the one of the same title. */
public final class LeadingSection {

  private static final String NEXT = "\n## ";

  private LeadingSection() {}

  /**
   * Writes the document anew; one that is not there yet consists of the section alone.
   *
   * @param title the heading of the section, as it is written
   * @throws IOException if it cannot be read or written
   */
  public static void write(Path document, String title, String section) throws IOException {
    String old = Files.exists(document) ? Files.readString(document) : "";
    Files.writeString(document, with(old, title, section));
  }

  /** A new version of a document with the section of this title that the old one has, if any. */
  public static String kept(Path old, String title, String made) throws IOException {
    String document = Files.exists(old) ? Files.readString(old) : "";
    int own = document.indexOf(title);
    if (own < 0) {
      return made;
    }
    int next = document.indexOf(NEXT, own + 1);
    String section = document.substring(own, next < 0 ? document.length() : next);
    return with(made, title, section);
  }

  static String with(String document, String title, String section) {
    int own = document.indexOf(title);
    String without = document;
    if (own >= 0) {
      int next = document.indexOf(NEXT, own + 1);
      without = document.substring(0, own) + (next < 0 ? "" : document.substring(next + 1));
    }
    int first = without.startsWith("## ") ? 0 : without.indexOf(NEXT) + 1;
    return first <= 0 && !without.startsWith("## ")
        ? without + section
        : without.substring(0, first) + section + "\n" + without.substring(first);
  }
}
