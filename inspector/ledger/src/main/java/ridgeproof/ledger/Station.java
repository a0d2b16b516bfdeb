package ridgeproof.ledger;

/**
 * A capture station as the file states it; empty text for what it leaves out.
 *
 * @param make at most {@value #MAX_LENGTH} characters, as are the others
 */
public record Station(String make, String model, String serial) {

  /** Characters kept of each part. */
  public static final int MAX_LENGTH = 64;

  public Station {
    make = limited(make);
    model = limited(model);
    serial = limited(serial);
  }

  private static String limited(String text) {
    // A database refuses the character 0, and a report shows no control character.
    String plain = text.replaceAll("\\p{Cntrl}", " ").strip();
    return plain.length() <= MAX_LENGTH ? plain : plain.substring(0, MAX_LENGTH);
  }

  /** Whether the file states nothing. */
  public boolean isUnknown() {
    return make.isEmpty() && model.isEmpty() && serial.isEmpty();
  }

  /** Make, model and serial number. */
  public String name() {
    return isUnknown()
        ? "station not stated"
        : String.join(" ", make, model, serial).replaceAll(" +", " ").strip();
  }
}
