package ridgeproof.corpus.year;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import ridgeproof.corpus.finger.SeededRandom;

/**
 * What happens in the year, drawn from a seed.
 *
 * @param stories whether the three stories happen
 */
record YearPlan(long seed, int submissions, boolean stories) {

  static final int STATIONS = 3;
  static final int OPERATORS = 6;
  static final int SUBJECTS = 40;

  /** The platen of this station gets a spot on {@link #DIRTY_SINCE}, which stays. */
  static final int DIRTY_STATION = 1;

  static final LocalDate DIRTY_SINCE = LocalDate.of(2025, 3, 11);

  /** This station gets another encoder on {@link #ENCODER_SINCE}. */
  static final int ENCODER_STATION = 2;

  static final LocalDate ENCODER_SINCE = LocalDate.of(2025, 6, 17);

  /** This operator rolls too narrowly, all year. */
  static final int NARROW_OPERATOR = 3;

  private static final LocalDate FIRST = LocalDate.of(2025, 1, 2);
  private static final int DAYS = 363;
  private static final int MAX_WAIT = 9;
  private static final double FAULT_RATE = 0.06;
  private static final double CORRECTED_RATE = 0.75;
  private static final double LOW_QUALITY_RATE = 0.03;
  private static final double NARROW_QUALITY_RATE = 0.2;
  private static final double OVERLOOKED_RATE = 0.1;

  /** The sittings in order of the days. */
  List<YearAppointment> sittings() {
    SeededRandom dice = new SeededRandom(seed, 900);
    List<LocalDate> days = new ArrayList<>();
    while (days.size() < submissions) {
      LocalDate day = FIRST.plusDays(dice.below(DAYS));
      if (day.getDayOfWeek() != DayOfWeek.SATURDAY && day.getDayOfWeek() != DayOfWeek.SUNDAY) {
        days.add(day);
      }
    }
    days.sort(Comparator.naturalOrder());
    List<YearAppointment> sittings = new ArrayList<>();
    for (int i = 0; i < days.size(); i++) {
      sittings.add(sitting(i + 1, days.get(i)));
    }
    return sittings;
  }

  private YearAppointment sitting(int number, LocalDate day) {
    SeededRandom dice = new SeededRandom(seed * 1_000_003 + number, 901);
    int station = dice.below(STATIONS);
    int operator = 2 * station + dice.below(2);
    int subject = dice.below(SUBJECTS);
    YearAppointment.Fault fault = YearAppointment.Fault.NONE;
    if (dice.chance(FAULT_RATE)) {
      fault =
          dice.chance(0.5) ? YearAppointment.Fault.DATE_PRINTED : YearAppointment.Fault.IMAGE_WIDTH;
    }
    boolean corrected = fault != YearAppointment.Fault.NONE && dice.chance(CORRECTED_RATE);
    boolean faulty = fault != YearAppointment.Fault.NONE && !corrected;
    YearAppointment.Answer answer =
        new YearAppointment.Answer(
            message(dice, faulty ? fault : YearAppointment.Fault.NONE, isNarrow(operator)));
    LocalDate sent = corrected ? day.plusDays(1) : day;
    LocalDate answered = sent.plusDays(1 + dice.below(MAX_WAIT));
    return new YearAppointment(
        number, day, station, operator, subject, fault, corrected, answer, answered);
  }

  private static Optional<String> message(
      SeededRandom dice, YearAppointment.Fault fault, boolean narrow) {
    if (fault != YearAppointment.Fault.NONE && !dice.chance(OVERLOOKED_RATE)) {
      return Optional.of(
          fault == YearAppointment.Fault.DATE_PRINTED
              ? "E0002 ELEMENT FAILED VALIDATION 2.038"
              : "E0006 FIELD RELATIONSHIP ERROR 14.006");
    }
    if (dice.chance(narrow ? NARROW_QUALITY_RATE : LOW_QUALITY_RATE)) {
      int finger = dice.chance(0.5) ? 2 : 7;
      return Optional.of(
          String.format(
              Locale.ROOT, "L0008 QUALITY OF CHARACTERISTICS TOO LOW, FINGER %d", finger));
    }
    return Optional.empty();
  }

  boolean isNarrow(int operator) {
    return stories && operator == NARROW_OPERATOR;
  }

  boolean isDirty(YearAppointment sitting) {
    return stories && sitting.station() == DIRTY_STATION && !sitting.day().isBefore(DIRTY_SINCE);
  }

  boolean hasNewEncoder(YearAppointment sitting) {
    return stories
        && sitting.station() == ENCODER_STATION
        && !sitting.day().isBefore(ENCODER_SINCE);
  }

  /** How the file names an operator. */
  static String operatorName(int operator) {
    return String.format(Locale.ROOT, "OPERATOR-%d", operator + 1);
  }

  /** The serial number of a station. */
  static String serial(int station) {
    return String.format(Locale.ROOT, "TW-%03d", station + 1);
  }
}
