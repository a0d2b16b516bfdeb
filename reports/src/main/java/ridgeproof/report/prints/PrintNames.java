package ridgeproof.report.prints;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.Code;

/** Names prints in words: the finger first, then how it was captured and its record. */
public final class PrintNames {

  private static final String PLAIN = "plain ";

  private final SpecTables tables;

  public PrintNames(SpecTables tables) {
    this.tables = tables;
  }

  /** Such as "right ring finger"; "right four fingers" for a slap. */
  public String finger(int position) {
    String name = tables.positionName(position);
    return name.startsWith(PLAIN) ? name.substring(PLAIN.length()) : name;
  }

  /**
   * Such as "Right ring finger (slap, record 13)".
   *
   * @param position of the finger, or of the whole image
   */
  public String of(ExaminedImage image, OptionalInt position) {
    String record = "record " + image.record().ordinal();
    if (position.isEmpty()) {
      return capitalized(record);
    }
    String capture = capture(image);
    return String.format(
        Locale.ROOT,
        "%s (%s%s)",
        capitalized(finger(position.getAsInt())),
        capture.isEmpty() ? "" : capture + ", ",
        record);
  }

  /** "rolled", "plain" or "slap"; empty text where the record does not tell. */
  private String capture(ExaminedImage image) {
    String kind = position(image).map(code -> code.property("kind")).orElse("");
    if (kind.equals("slap") || kind.equals("combination")) {
      return "slap";
    }
    String impression = impression(image);
    return impression.equals("plain") || impression.equals("rolled") ? impression : kind;
  }

  private Optional<Code> position(ExaminedImage image) {
    return image.position().isEmpty()
        ? Optional.empty()
        : tables.codes("finger-positions").find(Integer.toString(image.position().getAsInt()));
  }

  private String impression(ExaminedImage image) {
    return image.impression().isEmpty()
        ? ""
        : tables
            .codes("impressions")
            .find(Integer.toString(image.impression().getAsInt()))
            .map(code -> code.property("kind"))
            .orElse("");
  }

  static String capitalized(String text) {
    return text.isEmpty()
        ? text
        : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }
}
