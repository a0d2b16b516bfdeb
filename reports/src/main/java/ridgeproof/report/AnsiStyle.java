package ridgeproof.report;

import ridgeproof.examination.Verdict;
import ridgeproof.spec.rule.Severity;

/** Colour for a terminal; the words carry the meaning, colour only helps to find them. */
public final class AnsiStyle {

  private static final String RESET = "\u001B[0m";
  private static final String BOLD = "\u001B[1m";
  private static final String GREEN = "\u001B[32m";
  private static final String YELLOW = "\u001B[33m";
  private static final String RED = "\u001B[31m";

  private final boolean colour;

  public AnsiStyle(boolean colour) {
    this.colour = colour;
  }

  public String strong(String text) {
    return paint(BOLD, text);
  }

  public String verdict(Verdict verdict) {
    return switch (verdict) {
      case READY -> paint(BOLD + GREEN, verdict.name());
      case REVIEW -> paint(BOLD + YELLOW, verdict.name());
      case HOLD, UNREADABLE -> paint(BOLD + RED, verdict.name());
    };
  }

  public String severity(Severity severity) {
    String name = severity.name();
    return switch (severity) {
      case BLOCKING -> paint(RED, name);
      case LIKELY -> paint(YELLOW, name);
      case ADVICE, NOTE -> name;
    };
  }

  private String paint(String escape, String text) {
    return colour ? escape + text + RESET : text;
  }
}
