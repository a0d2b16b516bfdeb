package ridgeproof.report.page;

import java.util.Locale;

/** What there is of a friction ridge position. */
public enum PositionState {
  PRESENT("present"),
  ADVISED("check"),
  DOUBTFUL("recapture or correct"),
  MISSING("missing"),
  ACCOUNTED("annotated as missing"),
  NOT_ASKED("not required");

  private final String words;

  PositionState(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }

  /** The class in the style sheet. */
  public String style() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
