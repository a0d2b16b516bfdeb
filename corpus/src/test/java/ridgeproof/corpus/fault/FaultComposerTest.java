package ridgeproof.corpus.fault;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import ridgeproof.corpus.scenario.ScenarioError;

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
