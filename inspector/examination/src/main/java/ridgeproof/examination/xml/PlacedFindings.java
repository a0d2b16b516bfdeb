package ridgeproof.examination.xml;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import ridgeproof.finding.CausedBy;
import ridgeproof.finding.Finding;
import ridgeproof.finding.Location;
import ridgeproof.finding.TextPlace;
import ridgeproof.spec.SpecTables;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.record.ByteRange;
import ridgeproof.transaction.xml.Base64Places;
import ridgeproof.transaction.xml.TextPlaces;

/** Findings of a transaction in XML with line, column and element path of their places. */
public final class PlacedFindings {

  private static final String AREA = "XML";

  private final Transaction transaction;
  private final Map<Integer, TextPlace> places;

  /**
   * Looks the places up.
   *
   * @param findings all that will be placed
   */
  public PlacedFindings(Transaction transaction, SpecTables tables, List<Finding> findings) {
    this.transaction = transaction;
    TreeSet<Integer> offsets = new TreeSet<>();
    findings.stream()
        .flatMap(PlacedFindings::withRepeats)
        .flatMap(finding -> inFile(finding).bytes().stream())
        .forEach(bytes -> offsets.add(bytes.offset()));
    this.places = TextPlaces.of(transaction.source(), tables, offsets);
  }

  private static Stream<Finding> withRepeats(Finding finding) {
    return Stream.concat(Stream.of(finding), finding.repeats().stream());
  }

  /** The same findings with their places. */
  public List<Finding> of(List<Finding> findings) {
    return findings.stream().map(this::placed).toList();
  }

  private Finding placed(Finding finding) {
    Finding placed = finding.at(placed(inFile(finding)));
    if (!finding.repeats().isEmpty()) {
      placed = placed.repeatedAt(of(finding.repeats()));
    }
    Optional<CausedBy> cause = finding.causedBy();
    return cause.isPresent()
        ? placed.causedBy(new CausedBy(cause.get().ruleId(), placed(cause.get().location())))
        : placed;
  }

  private Location placed(Location location) {
    return location
        .bytes()
        .map(bytes -> places.get(bytes.offset()))
        .map(location::withText)
        .orElse(location);
  }

  /** Within an image, findings count the bytes that its Base64 stands for. */
  private Location inFile(Finding finding) {
    Location location = finding.location();
    if (location.bytes().isEmpty() || finding.rule().area().equals(AREA)) {
      return location;
    }
    ByteRange bytes = location.bytes().get();
    return transaction.records().stream()
        .filter(record -> record.range().contains(bytes.offset()))
        .flatMap(record -> record.fields().stream())
        .filter(field -> field.decodedLength().isPresent())
        .filter(field -> field.value().contains(bytes.offset()) && !field.value().equals(bytes))
        .findFirst()
        .map(field -> location.at(Base64Places.inFile(transaction.source(), field, bytes)))
        .orElse(location);
  }
}
