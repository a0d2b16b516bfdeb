package ridgeproof.corpus.fault;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import ridgeproof.corpus.scenario.ScenarioError;
import ridgeproof.examination.Examiner;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.finding.Finding;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.rule.Severity;
import ridgeproof.transaction.reader.ParseLimits;
import ridgeproof.transaction.record.ByteSource;

class FaultComposerTest {

  private static final FaultComposer COMPOSER = new FaultComposer();

  private static Fault fault(String base, String change) {
    return new Fault("X001", FaultArea.SET, base, "something", change, List.of(), List.of(), 0, "");
  }

  @Test
  void aFaultChangesTheCleanFileAndTheSameFaultGivesTheSameBytes() {
    Fault fault = fault("fauf-flats", "set 2.022 19881704");
    byte[] once = COMPOSER.compose(fault);
    assertFalse(Arrays.equals(COMPOSER.clean("fauf-flats"), once));
    assertArrayEquals(once, new FaultComposer().compose(fault));
  }

  @Test
  void aValueOfAnotherLengthLeavesLengthAndContentsRight() {
    String file = ByteVerbs.latin(COMPOSER.compose(fault("fauf-flats", "set 2.018 A,B")));
    int record = file.indexOf("2.001:");
    int length = Integer.parseInt(file.substring(record + 6, file.indexOf('\u001d', record)));
    assertEquals('\u001c', file.charAt(record + length - 1));
  }

  @Test
  void aStepThatMeansNothingNamesTheFaultAndTheStep() {
    for (String step :
        List.of("sett 2.018 X", "set 2.018@7 X", "drop 77", "whole upside-down", "cut")) {
      ScenarioError error =
          assertThrows(ScenarioError.class, () -> COMPOSER.compose(fault("fauf-flats", step)));
      assertTrue(error.getMessage().startsWith("X001: " + step), error.getMessage());
    }
  }

  @Test
  void recordsCannotBeChangedOnceTheFileIsFinished() {
    assertThrows(
        ScenarioError.class,
        () -> COMPOSER.compose(fault("fauf-flats", "cut 10;set 2.018 SPECIMEN,X")));
  }

  /**
   * The prints beside it in the slap keep their names, and are not said to be in wrong positions.
   */
  @Test
  void aFingerThatIsAnnotatedAsMissingButThereIsAllThatIsWrongWithItsCard() {
    ByteSource card = ByteSource.of(COMPOSER.compose(fault("fauf-card14", "declare 2 XX")));
    Examiner examiner = new Examiner(SpecTables.open(), ParseLimits.standard());
    ExaminationOptions options =
        ExaminationOptions.standard().withToday(LocalDate.parse("2026-05-20"));
    assertEquals(
        List.of("RP-TXN-005"),
        examiner.examine(card, options).findings().stream()
            .filter(finding -> finding.severity() != Severity.NOTE)
            .map(Finding::ruleId)
            .toList());
  }

  @Test
  void everyVerbIsUsedByTheCatalogue() {
    Set<String> used =
        Stream.concat(
                FaultCatalogue.faults().stream().map(Fault::change),
                FaultCatalogue.inXml().values().stream().map(FaultInXml::change))
            .flatMap(change -> Stream.of(change.split(";")))
            .map(step -> step.strip().split(" ")[0])
            .filter(verb -> !verb.isEmpty())
            .collect(Collectors.toCollection(TreeSet::new));
    assertEquals(new TreeSet<>(Verbs.ALL.keySet()), used);
  }
}
