package ridgeproof.examination.cause.value;

import java.util.List;
import java.util.Map;
import java.util.Set;
import ridgeproof.examination.cause.CauseLog;
import ridgeproof.examination.cause.CauseRule;
import ridgeproof.examination.cause.Consequences;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.finding.Finding;
import ridgeproof.spec.consistency.ImageRecordRow;
import ridgeproof.spec.layout.FieldNumber;

/**
 * A field that cannot be read as what it should be is the fault; what rests on its value is not.
 * Such a finding is a cause itself, so that no row of the catalogue is added.
 */
public final class MisreadFieldCause implements CauseRule {

  private static final Set<String> MISREAD =
      Set.of(
          "RP-FLD-001",
          "RP-FLD-002",
          "RP-FLD-003",
          "RP-FLD-004",
          "RP-FLD-005",
          "RP-FLD-006",
          "RP-FLD-007",
          "RP-FLD-008",
          "RP-COD-001",
          "RP-STR-005",
          "RP-STR-010",
          "RP-STR-017",
          "RP-STR-023",
          "RP-STR-028");

  /** Fields of the header, and what is reported where their value is used. */
  private static final Map<String, Consequences> OF_HEADER =
      Map.of(
          "1.002", Consequences.ofRules("RP-STR-023", "RP-FLD-011", "RP-FLD-013"),
          "1.003",
              Consequences.ofRules("RP-STR-014", "RP-STR-015", "RP-STR-016", "RP-STR-017")
                  .or(
                      Consequences.ofRules("RP-FLD-002", "RP-FLD-005", "RP-FLD-006")
                          .onlyWhere(MisreadFieldCause::isContents)),
          "1.011", Consequences.ofRules("RP-TXN-001", "RP-TXN-016", "RP-TXN-017", "RP-TXN-018"),
          "1.012",
              Consequences.ofRules(
                  "RP-TXN-002",
                  "RP-TXN-016",
                  "RP-TXN-018",
                  "RP-IMG-004",
                  "RP-IMG-008",
                  "RP-IMG-009",
                  "RP-IMG-010",
                  "RP-IMG-012",
                  "RP-IMG-039",
                  "RP-IMG-040",
                  "RP-RDG-013"));

  private static final Consequences OF_IDC =
      Consequences.ofRules("RP-STR-014", "RP-STR-016", "RP-STR-028", "RP-TXN-011", "RP-TXN-012");

  private static final Consequences OF_PRINT =
      Consequences.ofRules("RP-TXN-004", "RP-TXN-040", "RP-TXN-041", "RP-TXN-042");
  private static final FieldNumber CONTENTS = new FieldNumber(1, 3);
  private static final int IDC = 2;

  @Override
  public Set<String> ids() {
    return Set.of();
  }

  @Override
  public void establish(ExaminationInput examinee, List<Finding> found, CauseLog causes) {
    List<Finding> prints =
        found.stream().filter(finding -> saysWhichPrint(finding, examinee)).toList();
    long missing = found.stream().filter(OF_PRINT::include).count();
    for (Finding finding : found) {
      if (!MISREAD.contains(finding.ruleId())) {
        continue;
      }
      if (finding.ruleId().equals("RP-STR-028") || isField(finding, IDC)) {
        causes.add(finding, ofIdc(finding));
      } else if (finding.location().field().isPresent()) {
        String field = finding.location().field().get().toString();
        if (OF_HEADER.containsKey(field)) {
          causes.add(finding, OF_HEADER.get(field));
        }
      }
    }
    Consequences pixels = Consequences.ofRules("RP-RDG", "RP-SEQ");
    prints.forEach(finding -> causes.add(finding, pixels.inRecordOf(finding)));
    // Which print is missing cannot be known: more missing prints than misread ones stay.
    if (missing <= prints.size()) {
      prints.forEach(finding -> causes.add(finding, OF_PRINT));
    }
  }

  /** What the list of contents and links make of it, and the other finding of the same value. */
  private static Consequences ofIdc(Finding cause) {
    return OF_IDC
        .onlyWhere(other -> isOfFileOr(other, cause))
        .or(
            Consequences.ofRules(MISREAD.toArray(String[]::new))
                .onlyWhere(
                    other ->
                        isContents(other)
                            || isField(other, IDC)
                                && other.location().record().equals(cause.location().record())));
  }

  /** The list of contents repeats the IDC, and with it what is wrong in it. */
  private static boolean isContents(Finding finding) {
    return finding.location().field().filter(CONTENTS::equals).isPresent();
  }

  private static boolean isField(Finding finding, int field) {
    return finding
        .location()
        .field()
        .filter(number -> number.recordType() > 1 && number.field() == field)
        .isPresent();
  }

  /** The list of contents is of the file; another record's fields are its own. */
  private static boolean isOfFileOr(Finding other, Finding cause) {
    return other.location().recordType().orElse(1) == 1
        || other.location().record().equals(cause.location().record());
  }

  /** Whether it is about the position or the impression type, by which a print is counted. */
  private static boolean saysWhichPrint(Finding finding, ExaminationInput examinee) {
    return MISREAD.contains(finding.ruleId())
        && finding
            .location()
            .field()
            .filter(
                field ->
                    examinee.tables().imageRecords().stream()
                        .filter(ImageRecordRow::frictionRidge)
                        .anyMatch(
                            row ->
                                row.positions().filter(field::equals).isPresent()
                                    || row.impression().filter(field::equals).isPresent()))
            .isPresent();
  }
}
