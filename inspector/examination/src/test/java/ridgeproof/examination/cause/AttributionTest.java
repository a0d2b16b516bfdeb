package ridgeproof.examination.cause;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import ridgeproof.finding.Finding;
import ridgeproof.finding.FindingLog;
import ridgeproof.finding.Location;
import ridgeproof.finding.Observed;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.FieldNumber;

class AttributionTest {

  private static final SpecTables TABLES = SpecTables.open();
  private static final Finding SWAPPED = finding("RP-SEQ-002", Location.inRecord(3, 4), "");
  private static final Finding DARK = finding("RP-RDG-005", Location.inRecord(3, 4), "");
  private static final Finding DARK_ELSEWHERE = finding("RP-RDG-005", Location.inRecord(4, 4), "");

  private static Finding finding(String rule, Location place, String required) {
    FindingLog log = new FindingLog(TABLES, 1);
    log.add(rule, place, Observed.of("something"), required);
    return log.findings().get(0);
  }

  private static Cause cause(Consequences consequences) {
    return new Cause(finding("RP-IMG-040", Location.file(), ""), consequences);
  }

  private static List<String> rules(List<Finding> findings) {
    return findings.stream().map(Finding::ruleId).toList();
  }

  @Test
  void withoutACauseEveryFindingStays() {
    Attribution all = Attribution.of(List.of(SWAPPED, DARK), List.of());
    assertEquals(List.of(SWAPPED, DARK), all.shown());
    assertEquals(List.of(SWAPPED, DARK), all.every());
  }

  @Test
  void aCauseTakesItsConsequencesAndCountsThem() {
    Cause cause = cause(Consequences.ofRules("RP-SEQ", "RP-RDG-005").inRecords(Set.of(3)));
    Attribution all = Attribution.of(List.of(SWAPPED, DARK, DARK_ELSEWHERE), List.of(cause));
    assertEquals(List.of("RP-RDG-005", "RP-IMG-040"), rules(all.shown()));
    assertEquals(DARK_ELSEWHERE, all.shown().get(0));
    assertEquals(OptionalInt.of(2), all.shown().get(1).explains());
    assertEquals(
        List.of(Optional.of("RP-IMG-040"), Optional.of("RP-IMG-040"), Optional.empty()),
        all.every().stream().skip(1).map(f -> f.causedBy().map(c -> c.ruleId())).toList());
  }

  @Test
  void aCauseThatExplainsNothingSaysSo() {
    Attribution all = Attribution.of(List.of(DARK), List.of(cause(Consequences.none())));
    assertEquals(OptionalInt.of(0), all.shown().get(1).explains());
    assertEquals(DARK, all.shown().get(0));
  }

  @Test
  void exactlyTheseAreExplainedAndNoEqualOnes() {
    Finding equal = finding("RP-SEQ-002", Location.inRecord(3, 4), "");
    assertEquals(SWAPPED, equal);
    Attribution all =
        Attribution.of(
            List.of(SWAPPED, equal), List.of(cause(Consequences.exactly(List.of(SWAPPED)))));
    assertEquals(List.of("RP-SEQ-002", "RP-IMG-040"), rules(all.shown()));
  }

  @Test
  void aLaterCauseAndWhatItExplainsGoToTheEarlierThatExplainsIt() {
    Cause file = cause(Consequences.ofRules("RP-IMG-037"));
    Cause card =
        new Cause(
            finding("RP-IMG-037", Location.inRecord(3, 4), ""), Consequences.ofRules("RP-RDG-005"));
    Attribution all = Attribution.of(List.of(DARK, SWAPPED), List.of(file, card));
    assertEquals(List.of("RP-SEQ-002", "RP-IMG-040"), rules(all.shown()));
    assertEquals(OptionalInt.of(2), all.shown().get(1).explains());
    assertEquals(4, all.every().size());
  }

  @Test
  void eachCauseHasItsOwnConsequences() {
    Cause swapped =
        new Cause(finding("RP-TXN-021", Location.file(), ""), Consequences.ofRules("RP-SEQ-002"));
    Cause inverted = cause(Consequences.ofRules("RP-IMG-037"));
    Cause image =
        new Cause(
            finding("RP-IMG-037", Location.inRecord(3, 4), ""), Consequences.ofRules("RP-RDG-005"));
    Attribution all =
        Attribution.of(List.of(DARK, SWAPPED, DARK_ELSEWHERE), List.of(swapped, inverted, image));
    assertEquals(
        List.of("RP-TXN-021 explains 1", "RP-IMG-040 explains 3"),
        all.shown().stream()
            .map(finding -> finding.ruleId() + " explains " + finding.explains().orElse(0))
            .toList());
    assertEquals(
        List.of(
            "RP-TXN-021",
            "RP-IMG-040",
            "RP-IMG-037 of RP-IMG-040",
            "RP-RDG-005 of RP-IMG-040",
            "RP-SEQ-002 of RP-TXN-021",
            "RP-RDG-005 of RP-IMG-040"),
        all.every().stream()
            .map(f -> f.ruleId() + f.causedBy().map(c -> " of " + c.ruleId()).orElse(""))
            .toList());
  }

  @Test
  void consequencesAreAsNarrowAsTheyAreSaid() {
    Finding ring = finding("RP-RDG-005", position(4), "");
    Finding little = finding("RP-RDG-005", position(5), "");
    List<Finding> findings = List.of(DARK, ring, little);
    assertEquals(findings, included(Consequences.all(), findings));
    assertEquals(List.of(ring), included(Consequences.all().atPositions(Set.of(4)), findings));
    assertEquals(
        List.of(DARK),
        included(Consequences.where(finding -> finding.location().record().isPresent()), findings));
    assertEquals(List.of(), included(Consequences.none(), findings));
  }

  private static List<Finding> included(Consequences consequences, List<Finding> findings) {
    return findings.stream().filter(consequences::include).toList();
  }

  private static Location position(int code) {
    return Location.file().withPosition(OptionalInt.of(code));
  }

  @Test
  void whatADamageHidIsKept() {
    CauseLog log = new CauseLog(TABLES);
    log.reveal(DARK);
    assertEquals(List.of(DARK), log.revealed());
    assertEquals(List.of(), log.causes());
  }

  @Test
  void oneFaultInManySubfieldsIsOneFindingWithItsPlaces() {
    List<Finding> many =
        List.of(
            finding("RP-FLD-008", minutia(9, 2), "a number"),
            finding("RP-FLD-008", minutia(9, 3), "a number"),
            finding("RP-FLD-008", minutia(10, 2), "a number"),
            finding("RP-FLD-008", minutia(10, 2), "a date"));
    List<Finding> gathered = Repetitions.gathered(many);
    assertEquals(2, gathered.size());
    assertEquals(3, gathered.get(0).count());
    assertEquals(
        List.of(minutia(9, 3), minutia(10, 2)),
        gathered.get(0).repeats().stream().map(place -> place.location()).toList());
    assertEquals(1, gathered.get(1).count());
  }

  @Test
  void findingsThatNameAPrintOrNoFieldAreNotGathered() {
    Location right = minutia(3, 2).withPosition(OptionalInt.of(2));
    List<Finding> single =
        List.of(
            finding("RP-FLD-008", right, "a number"),
            finding("RP-FLD-008", right, "a number"),
            SWAPPED,
            SWAPPED);
    assertEquals(single, Repetitions.gathered(single));
  }

  private static Location minutia(int record, int subfield) {
    Location place = Location.inRecord(record, 9).in(new FieldNumber(9, 12));
    return new Location(
        place.record(),
        place.recordType(),
        place.idc(),
        place.field(),
        OptionalInt.of(subfield),
        OptionalInt.of(1),
        place.bytes(),
        place.position(),
        place.text());
  }
}
