package ridgeproof.examination.safecopy;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
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

  private final Examiner examiner;
  private final ExaminationOptions options;
  private final Optional<Function<PrintOrder, Optional<GrayImage>>> artist;

  /**
   * With blank images.
   *
   * @param options as the original was examined
   */
  public Deidentifier(Examiner examiner, ExaminationOptions options) {
    this(examiner, options, Optional.empty());
  }

  /**
   * With prints of nobody.
   *
   * @param options as the original was examined
   * @param artist draws a print of nobody that shows the same faults; empty where it cannot
   */
  public Deidentifier(
      Examiner examiner,
      ExaminationOptions options,
      Function<PrintOrder, Optional<GrayImage>> artist) {
    this(examiner, options, Optional.of(artist));
  }

  private Deidentifier(
      Examiner examiner,
      ExaminationOptions options,
      Optional<Function<PrintOrder, Optional<GrayImage>>> artist) {
    this.examiner = examiner;
    this.options = options;
    this.artist = artist;
  }

  public SafeCopy of(FindingsReport original) {
    if (original.transaction().isXml()) {
      return ofXml(original);
    }
    FindingsReport whole = at(artist.isEmpty() ? Depth.IMAGES : Depth.RIDGES, original);
    DeidentifiedWriter writer = new DeidentifiedWriter(whole);
    Map<DeidentifiedWriter.Place, Integer> values =
        closest(writer, at(Depth.STRUCTURE, original), options.withDepth(Depth.STRUCTURE));
    byte[] blank = writer.write(values, ordinal -> Optional.empty());
    if (artist.isEmpty()) {
      return copy(original, blank, options);
    }
    StandIns standIns = new StandIns(whole, artist.get(), writer);
    SafeCopy best = closest(whole, standIns, () -> writer.write(values, standIns::of), blank);
    return original == whole ? best : copy(original, best.bytes().toArray(), options);
  }

  /** The same file looked at so deeply, or more deeply where only more is wanted. */
  private FindingsReport at(Depth depth, FindingsReport original) {
    boolean enough =
        depth == Depth.STRUCTURE
            ? original.depth() == depth
            : original.depth().compareTo(depth) >= 0;
    return enough
        ? original
        : examiner.examine(original.transaction().source(), options.withDepth(depth));
  }

  /** With prints whose faults are made to show as they do in the original. */
  private SafeCopy closest(
      FindingsReport original, StandIns standIns, Supplier<byte[]> written, byte[] blank) {
    ExaminationOptions deep = options.withDepth(Depth.RIDGES);
    SafeCopy best = copy(original, written.get(), deep);
    SafeCopy latest = best;
    while (!best.isFaithful() && standIns.learn(latest.changesByRecord())) {
      latest = copy(original, written.get(), deep);
      best = latest.compareTo(best) < 0 ? latest : best;
    }
    if (!best.isFaithful() && standIns.settle()) {
      latest = copy(original, written.get(), deep);
      best = latest.compareTo(best) < 0 ? latest : best;
    }
    if (!best.isFaithful()) {
      latest = copy(original, blank, deep);
      best = latest.compareTo(best) < 0 ? latest : best;
    }
    return best;
  }

  private SafeCopy copy(FindingsReport original, byte[] bytes, ExaminationOptions depth) {
    FindingsReport copy = examiner.examine(ByteSource.of(bytes), depth);
    return new SafeCopy(
        ByteSource.of(bytes),
        FindingChange.missing(original, copy),
        FindingChange.missing(copy, original),
        FindingChange.isFirstOf(original, copy));
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
    return copy(original, xml, options);
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
