package ridgeproof.gate;

import java.time.Instant;

/** A line of the record, written before what it says is done. */
sealed interface Step {

  /** Of the file that it is about: given when the file is taken. */
  String id();

  Instant time();

  /**
   * A file is taken from the station.
   *
   * @param name as the station called it
   */
  record Taking(Instant time, String id, String name) implements Step {}

  /**
   * A file was examined and goes somewhere. The last decision on an id counts.
   *
   * @param to {@code ready} or {@code hold}
   * @param as its name in {@code ready}, or that of its folder in {@code hold}
   * @param sha256 of its bytes
   * @param verdict what the examination came to, or why there is none
   * @param why why a file is held that was READY; else empty
   */
  record Decided(
      Instant time, String id, String to, String as, String sha256, String verdict, String why)
      implements Step {}

  /**
   * A person lets a held file go.
   *
   * @param as its name in {@code ready}
   * @param reason from the agency's list
   * @param by who
   */
  record Releasing(Instant time, String id, String as, String reason, String by) implements Step {}
}
