package ridgeproof.examination.rules.layout;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.rules.Rule;
import ridgeproof.finding.FindingLog;
import ridgeproof.finding.Location;
import ridgeproof.finding.Observed;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.layout.ValueRule;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.record.LogicalRecord;

/**
 * Fields 1.011 and 1.012 are 00.00 exactly when no record of types 3 to 7 is in the transaction.
 */
final class ResolutionFieldsRule implements Rule {

  private static final Set<Integer> SCALED_BY_HEADER = Set.of(3, 4, 5, 6, 7);
  private static final FieldNumber NATIVE = new FieldNumber(1, 11);
  private static final FieldNumber NOMINAL = new FieldNumber(1, 12);

  @Override
  public Set<String> ids() {
    return Set.of("RP-TXN-001", "RP-TXN-002");
  }

  @Override
  public void check(ExaminationInput examinee, FindingLog log) {
    Transaction transaction = examinee.transaction();
    boolean expected =
        transaction.records().stream().anyMatch(r -> SCALED_BY_HEADER.contains(r.type()));
    transaction
        .header()
        .ifPresent(
            header -> {
              check("RP-TXN-001", header, NATIVE, expected, log);
              check("RP-TXN-002", header, NOMINAL, expected, log);
            });
  }

  private static void check(
      String rule, LogicalRecord header, FieldNumber number, boolean expected, FindingLog log) {
    Optional<String> text = header.text(number.field());
    OptionalDouble value = text.map(ValueRule::asNumber).orElse(OptionalDouble.empty());
    if (value.isEmpty() || value.getAsDouble() > 0 == expected) {
      return;
    }
    log.add(
        rule,
        Location.of(header, header.field(number.field()).orElseThrow()),
        Observed.of(text.orElseThrow()),
        expected ? "the resolution in pixels per millimeter, such as 19.69" : "00.00",
        List.of());
  }
}
