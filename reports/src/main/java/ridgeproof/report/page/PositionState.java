package ridgeproof.report.page;

import java.util.Locale;

/** What there is of a friction ridge position. */
public enum PositionState {
  PRESENT("present"),
  DOUBTFUL("look again"),
  MISSING("missing"),
  ACCOUNTED("accounted for"),
  NOT_ASKED("not asked for");

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
