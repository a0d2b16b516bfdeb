package ridgeproof.corpus.composition;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import ridgeproof.corpus.finger.TrueMinutia;
import ridgeproof.transaction.writer.RecordDraft;

/**
 * A Type-9 record with the true minutiae of an image in the standard form, fields 9.005 to 9.012.
 * From memory of ANSI/NIST-ITL 1-2000: the origin is the lower left corner of the image, places are
 * in hundredths of a millimetre, and the angle runs along the ridge away from its end.
 */
final class MinutiaeRecord {

  private static final int MOST = 254;
  private static final double HUNDREDTHS_PER_INCH = 2540;

  private MinutiaeRecord() {}

  static RecordDraft of(CapturedPrint print, int idc) {
    List<TrueMinutia> minutiae = print.impression().truth().minutiae();
    int count = Math.min(MOST, minutiae.size());
    Drafts drafts =
        Drafts.tagged(9, idc)
            .text(3, print.isRolled() ? 1 : 0)
            .text(4, "S")
            .items(5, List.of(List.of("RIDGEPROOF CORPUS", "A")))
            .text(6, String.format(Locale.ROOT, "%02d", print.box()))
            .text(10, count)
            .text(11, 0);
    List<List<String>> subfields = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      subfields.add(
          List.of(
              Integer.toString(i + 1),
              place(minutiae.get(i), print),
              "0",
              minutiae.get(i).kind() == TrueMinutia.Kind.ENDING ? "A" : "B"));
    }
    return count == 0 ? drafts.asTagged() : drafts.items(12, subfields).asTagged();
  }

  private static String place(TrueMinutia minutia, CapturedPrint print) {
    double scale = HUNDREDTHS_PER_INCH / print.labelledPpi();
    int height = print.impression().image().height();
    long x = Math.round(minutia.x() * scale);
    long y = Math.round((height - minutia.y()) * scale);
    long angle = Math.floorMod(Math.round(minutia.angleDegrees()), 360L);
    return String.format(Locale.ROOT, "%04d%04d%03d", Math.max(0, x), Math.max(0, y), angle);
  }
}
