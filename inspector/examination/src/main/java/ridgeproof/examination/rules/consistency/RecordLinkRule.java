package ridgeproof.examination.rules.consistency;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.Positions;
import ridgeproof.examination.rules.Rule;
import ridgeproof.finding.FindingLog;
import ridgeproof.finding.Location;
import ridgeproof.finding.Observed;
import ridgeproof.transaction.record.LogicalRecord;

/** Records with one IDC speak of one print, and features have an image to speak of. */
final class RecordLinkRule implements Rule {

  private static final int PARTICULARS_TYPE = 2;
  private static final int PARTICULARS_IDC = 0;

  @Override
  public Set<String> ids() {
    return Set.of("RP-TXN-011", "RP-TXN-012", "RP-TXN-013", "RP-TXN-014");
  }

  @Override
  public void check(ExaminationInput examinee, FindingLog log) {
    FeatureImageIndex images = new FeatureImageIndex(examinee);
    examinee
        .tables()
        .agreements()
        .describedTypes()
        .forEach((type, described) -> checkFeatures(type, described, examinee, images, log));
    checkPositions(examinee, log);
    checkParticulars(examinee.transaction().recordsOfType(PARTICULARS_TYPE), log);
  }

  private static void checkFeatures(
      int type,
      Set<Integer> described,
      ExaminationInput examinee,
      FeatureImageIndex images,
      FindingLog log) {
    boolean imaged =
        examinee.images().stream().anyMatch(image -> described.contains(image.record().type()));
    for (LogicalRecord record : examinee.transaction().recordsOfType(type)) {
      if (record.idc().isPresent() && images.of(record).isEmpty()) {
        log.add(
            imaged ? "RP-TXN-012" : "RP-TXN-011",
            Location.of(record),
            Observed.of(String.format(Locale.ROOT, "IDC %02d", record.idc().getAsInt())),
            "the IDC of an image record");
      }
    }
  }

  private static void checkPositions(ExaminationInput examinee, FindingLog log) {
    Positions positions = new Positions(examinee.tables());
    Map<Integer, ExaminedImage> byIdc = new HashMap<>();
    for (ExaminedImage image : examinee.prints()) {
      if (image.record().idc().isEmpty() || shown(image, positions).isEmpty()) {
        continue;
      }
      int idc = image.record().idc().getAsInt();
      ExaminedImage first = byIdc.putIfAbsent(idc, image);
      if (first != null
          && first.record().type() != image.record().type()
          && disjoint(shown(first, positions), shown(image, positions))) {
        log.add(
            "RP-TXN-013",
            image.location(),
            Observed.of(
                String.format(
                    Locale.ROOT,
                    "IDC %02d, as record %d of position %d",
                    idc,
                    first.record().ordinal(),
                    first.positions().get(0))),
            "an IDC of its own");
      }
    }
  }

  /** What is known of the prints in an image; none where a position leaves it open. */
  private static Set<Integer> shown(ExaminedImage image, Positions positions) {
    Set<Integer> shown = new HashSet<>();
    for (int position : image.positions()) {
      if (!positions.isNamed(position)) {
        return Set.of();
      }
      shown.add(position);
      shown.addAll(positions.fingers(position));
    }
    return shown;
  }

  private static boolean disjoint(Set<Integer> some, Set<Integer> others) {
    return some.stream().noneMatch(others::contains);
  }

  private static void checkParticulars(List<LogicalRecord> records, FindingLog log) {
    if (records.size() != 1 || records.get(0).idc().isEmpty()) {
      return;
    }
    int idc = records.get(0).idc().getAsInt();
    if (idc != PARTICULARS_IDC) {
      log.add(
          "RP-TXN-014",
          Location.of(records.get(0)),
          Observed.of(String.format(Locale.ROOT, "IDC %02d", idc)),
          String.format(Locale.ROOT, "IDC %02d", PARTICULARS_IDC));
    }
  }
}
