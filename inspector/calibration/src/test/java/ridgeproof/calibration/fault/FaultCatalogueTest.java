package ridgeproof.calibration.fault;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import ridgeproof.corpus.fault.Fault;
import ridgeproof.corpus.fault.FaultArea;
import ridgeproof.corpus.fault.FaultCatalogue;
import ridgeproof.examination.facts.Depth;
import ridgeproof.finding.Finding;

/**
 * The whole catalogue takes minutes and is in {@code docs/faults.md}. Here every fault that the
 * structure tells of is examined, and a sample of those that images and ridges tell of.
 */
@Tag("slow")
class FaultCatalogueTest {

  private static final EnumSet<FaultArea> OF_STRUCTURE =
      EnumSet.of(FaultArea.TRANSPORT, FaultArea.HEADER, FaultArea.PARTICULARS, FaultArea.SET);

  /** Of the others so many are examined with their ridges: all of them take minutes. */
  private static final int ONE_OF = 12;

  @Test
  void theCatalogueIsLargeAndSpread() {
    List<Fault> faults = FaultCatalogue.faults();
    assertTrue(faults.size() >= 200);
    for (FaultArea area : FaultArea.values()) {
      assertTrue(faults.stream().filter(f -> f.area() == area).count() >= 10, area::name);
    }
    for (String base : FaultCatalogue.bases()) {
      assertTrue(faults.stream().anyMatch(fault -> fault.base().equals(base)), base);
    }
  }

  @Test
  void faultsOfTheStructureAreNamedFirst() throws IOException {
    assertFare(Depth.STRUCTURE, faults(OF_STRUCTURE, 1));
  }

  @Test
  void aSampleOfTheFaultsOfImagesAndRidgesIsNamedFirst() throws IOException {
    assertFare(Depth.RIDGES, faults(EnumSet.complementOf(OF_STRUCTURE), ONE_OF));
  }

  /** Its ridges were looked at as those of a finger, and too many for one. */
  @Test
  void aPalmThatIsCalledAFingerIsNamedByItsPosition() throws IOException {
    List<Fault> palm =
        FaultCatalogue.faults().stream().filter(fault -> fault.id().equals("F007")).toList();
    assertEquals(1, palm.size());
    assertFare(Depth.RIDGES, palm);
  }

  @Test
  void cleanFilesAreNotAccused() {
    FaultTrial trial = new FaultTrial(Depth.IMAGES);
    for (String base : FaultCatalogue.bases()) {
      assertEquals(List.of(), trial.accusations(base).stream().map(Finding::ruleId).toList(), base);
    }
  }

  private static List<Fault> faults(Set<FaultArea> areas, int each) {
    List<Fault> all =
        FaultCatalogue.faults().stream().filter(fault -> areas.contains(fault.area())).toList();
    return IntStream.range(0, all.size()).filter(i -> i % each == 0).mapToObj(all::get).toList();
  }

  /** What is not named first is exactly what not-named.txt says, with the reason of each. */
  private static void assertFare(Depth depth, List<Fault> faults) throws IOException {
    List<FaultResult> results = new FaultTrial(depth).run(faults);
    Map<String, String> told = notNamed();
    told.keySet().retainAll(faults.stream().map(Fault::id).collect(Collectors.toSet()));
    Predicate<FaultResult> named = result -> result.outcome() == FaultOutcome.NAMED;
    Map<String, String> found = new TreeMap<>();
    results.stream()
        .filter(named.negate())
        .forEach(result -> found.put(result.fault().id(), result.outcome().words()));
    assertEquals(
        told,
        found,
        () ->
            results.stream()
                .filter(result -> named.test(result) == told.containsKey(result.fault().id()))
                .map(FaultResult::line)
                .collect(Collectors.joining("\n")));
  }

  private static Map<String, String> notNamed() throws IOException {
    Map<String, String> told = new TreeMap<>();
    try (InputStream in = FaultCatalogueTest.class.getResourceAsStream("not-named.txt")) {
      new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .filter(line -> !line.isBlank() && !line.startsWith("#"))
          .map(line -> line.split(": ", 3))
          .forEach(parts -> told.put(parts[0], parts[1]));
    }
    return told;
  }
}
