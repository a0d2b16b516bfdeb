package ridgeproof.archive.question;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** What is asked of an archive; each is a file of SQL on its four tables. */
public enum Question {
  FIRST_TIME_READY("READY at the first time, by station and month"),
  COMMONEST_FINDINGS("Commonest findings"),
  FILES_SENT_AGAIN("Files that came more than once"),
  IMAGES_UNDER_SEVERAL_CONTROL_NUMBERS("Images under several control numbers"),
  QUALITY_BY_DEVICE("Scores of fingers by device"),
  LAST_PEOPLE("Last people of each station");

  private final String title;

  Question(String title) {
    this.title = title;
  }

  public String title() {
    return title;
  }

  /** The query. */
  public String sql() {
    String name = name().toLowerCase(Locale.ROOT).replace('_', '-') + ".sql";
    try (InputStream in = Question.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
