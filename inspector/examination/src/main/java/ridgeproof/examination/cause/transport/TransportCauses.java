package ridgeproof.examination.cause.transport;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import ridgeproof.examination.cause.CauseLog;
import ridgeproof.examination.cause.Consequences;
import ridgeproof.finding.Finding;
import ridgeproof.finding.Location;
import ridgeproof.spec.FileSignature;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.record.LogicalRecord;

/**
 * Reports what happened to the bytes of a file, and what follows from it alone: the findings that
 * are no longer there once it is undone.
 */
public final class TransportCauses {

  /** What the rules report for an image whose bytes are not what its encoder wrote. */
  private static final Set<String> DAMAGED_IMAGE =
      Set.of("RP-IMG-005", "RP-IMG-006", "RP-IMG-007", "RP-IMG-011", "RP-IMG-013");

  private final Function<ByteSource, Reading> reader;
  private final List<FileSignature> signatures;

  /**
   * @param reader reads and runs the rules that open no image
   */
  public TransportCauses(Function<ByteSource, Reading> reader, List<FileSignature> signatures) {
    this.reader = reader;
    this.signatures = List.copyOf(signatures);
  }

  /** The rows of the catalogue that it can report. */
  public static Set<String> ids() {
    return Set.of(
        "RP-STR-030",
        "RP-STR-031",
        "RP-STR-032",
        "RP-STR-033",
        "RP-STR-034",
        "RP-STR-035",
        "RP-STR-036",
        "RP-STR-037",
        "RP-STR-038",
        "RP-STR-039",
        "RP-STR-040",
        "RP-STR-041");
  }

  /**
   * @param reading the file as it is, with what reading alone found
   * @param found what reading and all rules found
   */
  public void establish(Reading reading, List<Finding> found, CauseLog causes) {
    boolean imagesDamaged = found.stream().map(Finding::ruleId).anyMatch(DAMAGED_IMAGE::contains);
    List<TransportDamage> damages =
        Transport.damages(new Suspect(reading, imagesDamaged, reader, signatures));
    if (damages.isEmpty()) {
      return;
    }
    List<Finding> open = found;
    Reading before = reading;
    Remainder remainder = null;
    for (TransportDamage damage : damages) {
      remainder = new Remainder(damage, before);
      Map<Boolean, List<Finding>> parted =
          open.stream().collect(Collectors.partitioningBy(remainder::explains));
      List<Finding> explained = parted.get(true);
      open = parted.get(false);
      before = damage.undone().orElse(before);
      causes.add(
          damage.ruleId(),
          damage.location(),
          damage.observed(),
          damage.required(),
          List.of(),
          // What causes of the pictures make of damaged images is not known yet.
          Consequences.exactly(explained).or(Consequences.where(Transport::looksAtPixels)));
    }
    if (damages.stream().allMatch(TransportDamage::exact)) {
      remainder.revealed(reading).forEach(causes::reveal);
    }
  }

  /** What makes a finding the same in the damaged file and in the one that was undone. */
  private record Essence(String rule, String place, String observed, String required) {

    static Essence of(Finding finding) {
      Location at = finding.location();
      return new Essence(
          finding.ruleId(),
          List.of(at.recordType(), at.idc(), at.field(), at.subfield(), at.item(), at.position())
              .toString(),
          finding.observed().text(),
          finding.required());
    }
  }

  /** The findings that remain once a damage is undone. */
  private final class Remainder {

    private final TransportDamage damage;
    private final Map<Essence, List<Finding>> remaining = new HashMap<>();

    Remainder(TransportDamage damage, Reading before) {
      this.damage = damage;
      // What cannot be undone leaves what the structure shows, but for what it explains by itself.
      Reading after = damage.undone().orElseGet(() -> reader.apply(before.transaction().source()));
      for (Finding finding : after.findings()) {
        remaining.computeIfAbsent(Essence.of(finding), key -> new ArrayList<>()).add(finding);
      }
    }

    boolean explains(Finding finding) {
      boolean stays = take(finding);
      boolean ofImage = Transport.looksAtPixels(finding);
      if (damage.alone().isPresent()) {
        boolean ofRecord = ofImage && stays && !Transport.countsBytes(finding);
        return !ofRecord && damage.alone().get().include(finding);
      }
      return !stays && (!ofImage || damage.reach().touches(finding.location().record().orElse(0)));
    }

    private boolean take(Finding finding) {
      List<Finding> same = remaining.getOrDefault(Essence.of(finding), List.of());
      if (same.isEmpty()) {
        return false;
      }
      same.remove(0);
      return true;
    }

    /** What only the undone file shows. */
    List<Finding> revealed(Reading damaged) {
      return remaining.values().stream()
          .flatMap(List::stream)
          .map(finding -> finding.at(placed(finding.location(), damaged)))
          .toList();
    }

    /** The place in the damaged file, which may have no such record, and has other offsets. */
    private Location placed(Location place, Reading damaged) {
      List<LogicalRecord> records = damaged.transaction().records();
      int ordinal = place.record().orElse(0);
      boolean there =
          ordinal > 0
              && ordinal <= records.size()
              && records.get(ordinal - 1).type() == place.recordType().orElse(0);
      return place.withoutBytes(there);
    }
  }
}
