package ridgeproof.spec.agency;

import java.util.List;

/** What came of reading a profile. */
public sealed interface ProfileReading {

  record Usable(AgencyProfile profile) implements ProfileReading {}

  /**
   * @param problems at least one, in the order in which they were met
   */
  record Unusable(List<Problem> problems) implements ProfileReading {}

  /**
   * Something that cannot be used.
   *
   * @param line from 1
   * @param column from 1
   */
  record Problem(int line, int column, String message) {

    /** As compilers write it, for instance {@code pilots.toml:3:8: ...}. */
    public String inFile(String file) {
      return file + ":" + line + ":" + column + ": " + message;
    }
  }
}
