package ridgeproof.examination.safecopy;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import ridgeproof.examination.Examiner;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.finding.Location;
import ridgeproof.imagery.GrayImage;
import ridgeproof.transaction.reader.ParseLimits;
import ridgeproof.transaction.reader.TransactionReader;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.xml.writer.TraditionalDrafts;
import ridgeproof.transaction.xml.writer.XmlTransactionWriter;

/**
 * Makes copies of transactions that strangers may have: the layout and, as far as can be, the
 * findings are those of the original, while biographic data is made up and images are blank or of
 * nobody. The same original gives the same copy.
 */
public final class Deidentifier {

  /** A value that loses a finding is made up anew so often. */
  private static final int MAX_ATTEMPTS = 12;

  /** So often prints are drawn with more of a fault until it shows. */
  private static final int MAX_DRAWINGS = 3;

  private final Examiner examiner;
  private final ExaminationOptions options;
  private final Function<PrintOrder, Optional<GrayImage>> artist;

  /**
   * With blank images.
   *
   * @param options as the original was examined
   */
  public Deidentifier(Examiner examiner, ExaminationOptions options) {
    this(examiner, options, order -> Optional.empty());
  }

  /**
   * With prints of nobody where the ridges of the original were looked at.
   *
   * @param options as the original was examined
   * @param artist draws a print of nobody that shows the same faults; empty where it cannot
   */
  public Deidentifier(
      Examiner examiner,
      ExaminationOptions options,
      Function<PrintOrder, Optional<GrayImage>> artist) {
    this.examiner = examiner;
    this.options = options;
    this.artist = artist;
  }

  public SafeCopy of(FindingsReport original) {
    if (original.transaction().isXml()) {
      return ofXml(original);
    }
    ByteSource source = original.transaction().source();
    ExaminationOptions quick = options.withDepth(Depth.STRUCTURE);
    boolean opened = original.depth() != Depth.STRUCTURE;
    FindingsReport whole =
        opened ? original : examiner.examine(source, options.withDepth(Depth.IMAGES));
    FindingsReport structure = opened ? examiner.examine(source, quick) : original;
    DeidentifiedWriter writer = new DeidentifiedWriter(whole);
    Map<DeidentifiedWriter.Place, Integer> values = closest(writer, structure, quick);
    SafeCopy best = copy(original, writer.write(values, ordinal -> Optional.empty()));
    if (original.depth() != Depth.RIDGES) {
      return best;
    }
    StandIns standIns = new StandIns(original, artist, writer.seedOfPrints());
    for (int i = 0; i < MAX_DRAWINGS; i++) {
      SafeCopy drawn = copy(original, writer.write(values, standIns::of));
      best = drawn.compareTo(best) < 0 ? drawn : best;
      if (drawn.added().isEmpty() && drawn.lost().isEmpty()) {
        return drawn;
      }
      drawn.lost().stream()
          .flatMapToInt(change -> change.finding().location().record().stream())
          .distinct()
          .forEach(standIns::tryHarder);
      drawn.added().stream()
          .flatMapToInt(finding -> finding.location().record().stream())
          .distinct()
          .forEach(standIns::leaveBlank);
    }
    return best;
  }

  private SafeCopy copy(FindingsReport original, byte[] bytes) {
    FindingsReport copy = examiner.examine(ByteSource.of(bytes), options);
    return new SafeCopy(
        ByteSource.of(bytes),
        FindingChange.missing(original, copy),
        FindingChange.missing(copy, original));
  }

  /** By way of the traditional encoding, whose copy has nothing but what fields hold. */
  private SafeCopy ofXml(FindingsReport original) {
    byte[] traditional = new TraditionalDrafts(original.tables()).write(original.transaction());
    SafeCopy copy = of(examiner.examine(ByteSource.of(traditional), options));
    byte[] xml =
        new XmlTransactionWriter(original.tables())
            .write(
                new TransactionReader(original.tables(), ParseLimits.standard())
                    .read(copy.bytes()));
    FindingsReport written = examiner.examine(ByteSource.of(xml), options);
    return new SafeCopy(
        ByteSource.of(xml),
        FindingChange.missing(original, written),
        FindingChange.missing(written, original));
  }

  /** Of several attempts the one that changes the fewest findings. */
  private Map<DeidentifiedWriter.Place, Integer> closest(
      DeidentifiedWriter writer, FindingsReport original, ExaminationOptions quick) {
    Map<DeidentifiedWriter.Place, Integer> attempts = new HashMap<>();
    Map<DeidentifiedWriter.Place, Integer> best = Map.of();
    int fewest = Integer.MAX_VALUE;
    for (int i = 0; i < MAX_ATTEMPTS && fewest > 0; i++) {
      byte[] bytes = writer.write(attempts, ordinal -> Optional.empty());
      FindingsReport copy = examiner.examine(ByteSource.of(bytes), quick);
      List<FindingChange> changes =
          Stream.of(FindingChange.missing(original, copy), FindingChange.missing(copy, original))
              .flatMap(List::stream)
              .toList();
      if (changes.size() < fewest) {
        fewest = changes.size();
        best = Map.copyOf(attempts);
      }
      placesOf(changes).forEach(place -> attempts.merge(place, 1, Integer::sum));
    }
    return best;
  }

  private static Set<DeidentifiedWriter.Place> placesOf(List<FindingChange> changes) {
    return changes.stream()
        .map(change -> change.finding().location())
        .filter(place -> place.record().isPresent() && place.field().isPresent())
        .map(Deidentifier::placeOf)
        .collect(Collectors.toSet());
  }

  private static DeidentifiedWriter.Place placeOf(Location place) {
    return new DeidentifiedWriter.Place(
        place.record().getAsInt(), place.field().orElseThrow().field());
  }
}
