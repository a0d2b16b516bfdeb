package ridgeproof.calibration.fault;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import ridgeproof.corpus.fault.Fault;
import ridgeproof.corpus.fault.FaultArea;
import ridgeproof.corpus.fault.FaultCatalogue;
import ridgeproof.corpus.fault.FaultInXml;
import ridgeproof.examination.facts.Depth;

/**
 * A fault gives the same first finding in both encodings, or the counterpart that the catalogue
 * names. Here a sample is examined; the whole catalogue is in {@code docs/faults-in-xml.md}.
 */
@Tag("slow")
class XmlFaultsTest {

  private static final Set<FaultArea> OF_FIELDS =
      EnumSet.of(FaultArea.HEADER, FaultArea.PARTICULARS, FaultArea.SET);
  private static final Set<FaultArea> OF_IMAGES =
      EnumSet.complementOf(
          EnumSet.of(FaultArea.TRANSPORT, FaultArea.HEADER, FaultArea.PARTICULARS, FaultArea.SET));

  private final Map<String, FaultInXml> rows = FaultCatalogue.inXml();

  @Test
  void whatBefallsAWholeFileIsNamed() {
    assertAlike(Depth.STRUCTURE, faults(EnumSet.of(FaultArea.TRANSPORT), fault -> true, 1));
  }

  @Test
  void faultsOfFieldsAndOfTheSetAreNamed() {
    assertAlike(Depth.STRUCTURE, faults(OF_FIELDS, fault -> true, 10));
  }

  @Test
  void faultsOfImagesAreNamed() {
    assertAlike(Depth.IMAGES, faults(OF_IMAGES, fault -> fault.area() == FaultArea.IMAGE, 20));
    assertAlike(Depth.RIDGES, faults(OF_IMAGES, fault -> fault.area() != FaultArea.IMAGE, 40));
  }

  @Test
  void theTableOfXmlSpeaksOfFaultsOfTheCatalogue() {
    Set<String> ids = FaultCatalogue.faults().stream().map(Fault::id).collect(Collectors.toSet());
    assertTrue(ids.containsAll(rows.keySet()), rows.keySet()::toString);
    assertTrue(rows.values().stream().noneMatch(row -> row.why().isBlank()));
  }

  private static List<Fault> faults(Set<FaultArea> areas, Predicate<Fault> which, int oneOf) {
    List<Fault> all =
        FaultCatalogue.faults().stream()
            .filter(fault -> areas.contains(fault.area()) && which.test(fault))
            .toList();
    return IntStream.range(0, all.size())
        .filter(i -> i % oneOf == oneOf / 2)
        .mapToObj(all::get)
        .toList();
  }

  private static void assertAlike(Depth depth, List<Fault> faults) {
    assertEquals(
        "",
        new XmlTrial(depth)
            .run(faults).stream()
                .filter(one -> !one.isAlike())
                .map(XmlComparison::line)
                .collect(Collectors.joining("\n")));
  }
}
