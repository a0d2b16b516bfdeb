package ridgeproof.finding;

/**
 * What was found, short, with its unit.
 *
 * @param text at most {@value #LONGEST} characters
 * @param personal whether it tells of a person; renderers mask it unless asked not to
 */
public record Observed(String text, boolean personal) {

  /** Five fingers by name, and a note. */
  private static final int LONGEST = 120;

  public Observed {
    text = text.length() <= LONGEST ? text : text.substring(0, LONGEST - 1) + "\u2026";
  }

  public static Observed of(String text) {
    return new Observed(text, false);
  }

  /** A value that tells of a person. */
  public static Observed personal(String text) {
    return new Observed(text, true);
  }
}
