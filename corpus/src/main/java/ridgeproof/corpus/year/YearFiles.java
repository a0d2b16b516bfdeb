package ridgeproof.corpus.year;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.wsq.WsqEncoder;
import ridgeproof.imagery.wsq.WsqEncoding;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.record.CharacterEncoding;
import ridgeproof.transaction.writer.FieldDraft;
import ridgeproof.transaction.writer.RecordDraft;
import ridgeproof.transaction.writer.TransactionWriter;

/** The files of a sitting: submissions of two rolled index fingers, and what the bureau answers. */
final class YearFiles {

  /** The field that names the operator: one of the office's own. */
  static final String OPERATOR_FIELD = "2.3001";

  private static final DateTimeFormatter DATE =
      DateTimeFormatter.ofPattern("uuuuMMdd", Locale.ROOT);
  private static final int PPI = 500;
  private static final double USUAL_RATE = 1.5;
  private static final double NEW_RATE = 0.75;
  private static final int USUAL_SOFTWARE = 4100;
  private static final int NEW_SOFTWARE = 5200;
  private static final String OFFICE = "THP000001";
  private static final String BUREAU = "THP000000";

  private final YearPlan plan;
  private final YearCapture capture;
  private final boolean compressed;

  /**
   * @param compressed whether images are stored as WSQ; else as pixels, which is quicker
   */
  YearFiles(YearPlan plan, boolean compressed) {
    this.plan = plan;
    this.capture = new YearCapture(plan);
    this.compressed = compressed;
  }

  /** A file with its name. */
  record Named(String name, byte[] bytes) {}

  /** The files of a sitting, in order of time. */
  List<Named> of(YearAppointment sitting) {
    List<Named> files = new ArrayList<>();
    String number = String.format(Locale.ROOT, "%06d", sitting.number());
    files.add(new Named(number + "-a.an2", submission(sitting, false)));
    if (sitting.corrected()) {
      files.add(new Named(number + "-b.an2", submission(sitting, true)));
    }
    files.add(new Named(number + "-response.an2", response(sitting)));
    return files;
  }

  private byte[] submission(YearAppointment sitting, boolean corrected) {
    boolean faulty = sitting.fault() != YearAppointment.Fault.NONE && !corrected;
    LocalDate day = corrected ? sitting.day().plusDays(1) : sitting.day();
    boolean badDate = faulty && sitting.fault() == YearAppointment.Fault.DATE_PRINTED;
    RecordDraft particulars =
        RecordDraft.tagged(
            2,
            List.of(
                text(2, 1, ""),
                text(2, 2, "00"),
                text(2, 6, "LICENSING OFFICE"),
                text(2, 14, String.format(Locale.ROOT, "P%08d", sitting.number())),
                text(2, 18, "SPECIMEN,SUBJECT"),
                text(2, 38, badDate ? "20251431" : DATE.format(sitting.day())),
                text(2, 73, OFFICE),
                text(2, 3001, YearPlan.operatorName(sitting.operator()))));
    List<RecordDraft> records = new ArrayList<>();
    records.add(header("FIS", day, BUREAU, OFFICE, sitting.control(), ""));
    records.add(particulars);
    records.add(print(sitting, 2, 1, faulty));
    records.add(print(sitting, 7, 2, false));
    return new TransactionWriter(CharacterEncoding.ASCII).write(records);
  }

  private RecordDraft print(YearAppointment sitting, int finger, int idc, boolean faulty) {
    GrayImage image = capture.image(sitting, finger);
    boolean badWidth = faulty && sitting.fault() == YearAppointment.Fault.IMAGE_WIDTH;
    boolean newEncoder = plan.hasNewEncoder(sitting);
    byte[] data =
        compressed
            ? WsqEncoder.encode(
                image,
                new WsqEncoding(
                    newEncoder ? NEW_RATE : USUAL_RATE,
                    PPI,
                    newEncoder ? NEW_SOFTWARE : USUAL_SOFTWARE))
            : image.toArray();
    return RecordDraft.tagged(
        14,
        List.of(
            text(14, 1, ""),
            text(14, 2, String.format(Locale.ROOT, "%02d", idc)),
            text(14, 3, "1"),
            text(14, 4, OFFICE),
            text(14, 5, DATE.format(sitting.day())),
            text(14, 6, Integer.toString(image.width() + (badWidth ? 8 : 0))),
            text(14, 7, Integer.toString(image.height())),
            text(14, 8, "1"),
            text(14, 9, Integer.toString(PPI)),
            text(14, 10, Integer.toString(PPI)),
            text(14, 11, compressed ? "WSQ20" : "NONE"),
            text(14, 12, "8"),
            text(14, 13, Integer.toString(finger)),
            FieldDraft.text(
                new FieldNumber(14, 904),
                List.of(List.of("TIDEWATER", "LS-1", YearPlan.serial(sitting.station())))),
            FieldDraft.data(new FieldNumber(14, 999), ByteSource.of(data))));
  }

  private static byte[] response(YearAppointment sitting) {
    boolean accepted = sitting.answer().isAcceptance();
    List<FieldDraft> fields =
        new ArrayList<>(
            List.of(
                text(2, 1, ""),
                text(2, 2, "00"),
                text(2, 6, "LICENSING OFFICE"),
                text(2, 14, String.format(Locale.ROOT, "P%08d", sitting.number()))));
    sitting.answer().message().ifPresent(message -> fields.add(text(2, 60, message)));
    fields.add(text(2, 73, OFFICE));
    return new TransactionWriter(CharacterEncoding.ASCII)
        .write(
            List.of(
                header(
                    accepted ? "FISR" : "ERRT",
                    sitting.answered(),
                    OFFICE,
                    BUREAU,
                    String.format(Locale.ROOT, "BUREAU-%06d", sitting.number()),
                    sitting.control()),
                RecordDraft.tagged(2, fields)));
  }

  private static RecordDraft header(
      String type, LocalDate day, String to, String from, String control, String reference) {
    List<FieldDraft> fields =
        new ArrayList<>(
            List.of(
                text(1, 1, ""),
                text(1, 2, "0502"),
                text(1, 3, ""),
                text(1, 4, type),
                text(1, 5, DATE.format(day)),
                text(1, 7, to),
                text(1, 8, from),
                text(1, 9, control)));
    if (!reference.isEmpty()) {
      fields.add(text(1, 10, reference));
    }
    fields.add(text(1, 11, "00.00"));
    fields.add(text(1, 12, "00.00"));
    fields.add(FieldDraft.text(new FieldNumber(1, 13), List.of(List.of("NORAM", ""))));
    fields.add(text(1, 14, DATE.format(day) + "101500Z"));
    return RecordDraft.tagged(1, fields);
  }

  private static FieldDraft text(int record, int field, String value) {
    return FieldDraft.text(new FieldNumber(record, field), value);
  }
}
