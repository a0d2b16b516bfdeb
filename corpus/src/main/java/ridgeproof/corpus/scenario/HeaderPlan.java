package ridgeproof.corpus.scenario;

/**
 * The Type-1 record.
 *
 * @param version field 1.002, 0200 to 0502; it also decides which fields the other records have
 * @param type field 1.004
 * @param date field 1.005, also the day of every capture
 * @param destination field 1.007
 * @param originator field 1.008
 * @param controlNumber field 1.009
 */
public record HeaderPlan(
    String version,
    String type,
    String date,
    String destination,
    String originator,
    String controlNumber) {

  private static final int OLDEST = 200;
  private static final int NEWEST = 502;

  public HeaderPlan {
    version = Defaults.orElse(version, "0500");
    if (!version.matches("[0-9]{4}")) {
      throw new IllegalArgumentException("version is " + version + ", not four digits");
    }
    Defaults.within("version", Integer.parseInt(version), OLDEST, NEWEST);
    type = Defaults.orElse(type, "FAUF");
    date = Defaults.orElse(date, "20260302");
    destination = Defaults.orElse(destination, "THP000000");
    originator = Defaults.orElse(originator, "THP000001");
    controlNumber = Defaults.orElse(controlNumber, "PILOT-0001");
  }

  static HeaderPlan standard() {
    return new HeaderPlan(null, null, null, null, null, null);
  }

  public int versionNumber() {
    return Integer.parseInt(version);
  }
}
