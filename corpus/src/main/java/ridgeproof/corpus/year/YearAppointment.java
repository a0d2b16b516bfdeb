package ridgeproof.corpus.year;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;

/**
 * One submission of the year.
 *
 * @param number from 1, in order of the days
 * @param station 0 to 2
 * @param operator 0 to 5; two work at each station
 * @param subject number within the pool
 * @param fault what is wrong with the file
 * @param corrected whether the fault was found and the file was corrected before sending
 * @param answer of the bureau
 * @param answered the day of the answer
 */
record YearAppointment(
    int number,
    LocalDate day,
    int station,
    int operator,
    int subject,
    Fault fault,
    boolean corrected,
    Answer answer,
    LocalDate answered) {

  /** A mistake in the file. */
  enum Fault {
    NONE,
    DATE_PRINTED,
    IMAGE_WIDTH
  }

  /**
   * What the bureau says.
   *
   * @param message field 2.060, empty where it accepts
   */
  record Answer(Optional<String> message) {
    boolean isAcceptance() {
      return message.isEmpty();
    }
  }

  /** The control number of the submission. */
  String control() {
    return String.format(Locale.ROOT, "PILOT-%06d", number);
  }
}
