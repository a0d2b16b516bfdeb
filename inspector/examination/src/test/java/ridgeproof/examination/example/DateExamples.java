package ridgeproof.examination.example;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import ridgeproof.examination.SampleCard;

/** Dates of a transaction that cannot all be right. */
final class DateExamples {

  private static final LocalDate TODAY = SampleCard.TODAY;

  private DateExamples() {}

  static ExampleList list() {
    LocalDate later = TODAY.plusDays(40);
    LocalDate tomorrow = TODAY.plusDays(1);
    LocalDate overmorrow = TODAY.plusDays(2);
    return new ExampleList("dates")
        .pair("RP-TXN-061", dated(overmorrow, TODAY, TODAY), dated(tomorrow, TODAY, TODAY))
        .add("RP-TXN-061 far", dated(LocalDate.of(2099, 1, 1), TODAY, TODAY))
        .pair("RP-TXN-062", dated(later, later, later), dated(tomorrow, tomorrow, tomorrow))
        .pair("RP-TXN-063", dated(TODAY, TODAY.plusDays(3), TODAY), dated(TODAY, tomorrow, TODAY))
        .add("RP-TXN-064", dated(LocalDate.of(1970, 1, 1), TODAY, TODAY));
  }

  /** A card made on a day, in Greenwich on another, of prints taken on a third. */
  private static SampleCard dated(LocalDate made, LocalDate greenwich, LocalDate taken) {
    SampleCard card =
        SampleCard.rolledTagged()
            .with(1, r -> r.with(5, day(made)).with(14, day(greenwich) + "101500Z"))
            .with(2, r -> r.with(38, day(taken)));
    for (int record = 3; record <= 16; record++) {
      card = card.with(record, r -> r.with(5, day(taken)));
    }
    return card;
  }

  private static String day(LocalDate date) {
    return date.format(DateTimeFormatter.BASIC_ISO_DATE);
  }
}
