package ridgeproof.report.summary;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.Verdict;
import ridgeproof.report.PilotCard;
import ridgeproof.report.summary.OriginCounts.Origin;
import ridgeproof.spec.consistency.CaptureOrigin.Kind;
import ridgeproof.spec.layout.FieldNumber;

/** By which station, agency or operator files are counted. */
class OriginCountsTest {

  private static final FieldNumber AGENCY = new FieldNumber(1, 8);
  private static final FieldNumber EQUIPMENT = new FieldNumber(2, 67);
  private static final FieldNumber OPERATOR = new FieldNumber(2, 2102);

  private static FindingsReport of(PilotCard card) {
    return MadeReport.of(Verdict.READY, card);
  }

  private static FindingsReport agency(String value) {
    return of(PilotCard.ascii().inOrder(List.of()).header(8, value));
  }

  private static FindingsReport equipment(String value) {
    return of(PilotCard.ascii().particular(67, value));
  }

  private static List<String> lines(OriginCounts counts, boolean showPersonal) {
    return counts.origins(showPersonal).stream()
        .map(origin -> origin.name() + ", " + origin.verbatim() + ", " + origin.tally().files())
        .toList();
  }

  private static OriginCounts counted(Kind kind, FieldNumber field, FindingsReport... reports) {
    OriginCounts counts = new OriginCounts(kind, List.of(field));
    for (FindingsReport report : reports) {
      counts.add(report);
    }
    return counts;
  }

  @Test
  void valuesAreCountedInOrderOfAppearanceThenThoseWithout() {
    OriginCounts counts =
        counted(
            Kind.STATION,
            EQUIPMENT,
            equipment("TIDE\u001fROLL"),
            of(PilotCard.ascii()),
            equipment("ANCHOR"),
            equipment("TIDE\u001fROLL"));
    assertEquals(
        List.of("station A, false, 2", "station B, false, 1", "not stated in the file, false, 1"),
        lines(counts, false));
    assertEquals(
        List.of("TIDE ROLL, true, 2", "ANCHOR, true, 1", "not stated in the file, false, 1"),
        lines(counts, true));
    assertEquals(List.of("station A", "station B"), counts.names(false));
    assertEquals(List.of("TIDE ROLL", "ANCHOR"), counts.names(true));
  }

  @Test
  void whereEveryFileHasAValueThereIsNoOtherRow() {
    assertEquals(
        List.of("operator 1, false, 1"),
        lines(
            counted(
                Kind.OPERATOR, OPERATOR, of(PilotCard.ascii().particular(2102, "SPECIMEN,BEA"))),
            false));
  }

  @Test
  void afterStationZComesStationAA() {
    OriginCounts counts = new OriginCounts(Kind.STATION, List.of(AGENCY));
    IntStream.range(0, 79).forEach(i -> counts.add(agency("THP1000" + (10 + i))));
    List<String> names = counts.names(false);
    assertEquals(
        List.of("station A", "station Z", "station AA", "station AZ", "station BA", "station CA"),
        List.of(
            names.get(0),
            names.get(25),
            names.get(26),
            names.get(51),
            names.get(52),
            names.get(78)));
  }

  @Test
  void aFileIsKnownByTheIndexOfItsValue() {
    OriginCounts counts = counted(Kind.AGENCY, AGENCY, agency("THP000001"), agency("THP000002"));
    assertEquals(OptionalInt.of(0), counts.index(agency("THP000001")));
    assertEquals(OptionalInt.of(1), counts.index(agency("THP000002")));
    assertEquals(OptionalInt.empty(), counts.index(agency("THP000003")));
    assertEquals(
        OptionalInt.empty(), counted(Kind.STATION, EQUIPMENT).index(of(PilotCard.ascii())));
  }

  @Test
  void theFirstFieldThatSaysSomethingDecides() {
    OriginCounts counts = new OriginCounts(Kind.STATION, List.of(EQUIPMENT, AGENCY));
    counts.add(equipment(" \u001f "));
    counts.add(equipment("TIDE"));
    assertEquals(List.of(EQUIPMENT, AGENCY), counts.fields());
    assertEquals(List.of("THP000001", "TIDE"), counts.names(true));
  }

  @Test
  void aNameIsMadeOfTheFirstThreeItemsThatSaySomething() {
    assertEquals(
        List.of("TIDE 7", "a\\x1Bb"),
        counted(
                Kind.STATION,
                EQUIPMENT,
                equipment(" TIDE \u001f \u001f7\u001f8"),
                equipment("a\u001bb"))
            .names(true));
  }

  @Test
  void aNameHasAtMostOneHundredAndTwentyCharacters() {
    assertEquals(
        List.of("T".repeat(120)),
        counted(Kind.STATION, EQUIPMENT, equipment("T".repeat(120)), equipment("T".repeat(121)))
            .names(true));
  }

  @Test
  void valuesBeyondTheMostAreCountedTogether() {
    OriginCounts counts = new OriginCounts(Kind.AGENCY, List.of(AGENCY));
    IntStream.range(0, OriginCounts.MOST + 2)
        .forEach(i -> counts.add(agency("THP" + (100000 + i))));
    counts.add(agency("THP100000"));
    List<Origin> origins = counts.origins(true);
    assertEquals(OriginCounts.MOST + 1, origins.size());
    assertEquals(
        List.of("THP100000, true, 2", "others, false, 2"),
        List.of(lines(counts, true).get(0), lines(counts, true).get(OriginCounts.MOST)));
    assertEquals(OptionalInt.empty(), counts.index(agency("THP100200")));
  }
}
