package ridgeproof.examination.rules.transaction;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.rules.Rule;
import ridgeproof.examination.submission.TransactionKind;
import ridgeproof.finding.FindingLog;
import ridgeproof.finding.Location;
import ridgeproof.finding.Observed;
import ridgeproof.spec.layout.Code;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.transaction.record.LogicalRecord;

/** The type of transaction, field 1.004, is in a list by which the file can be judged. */
final class TransactionTypeRule implements Rule {

  private static final String NOT_LISTED = "RP-PTL-004";
  private static final String UNKNOWN_DOMAIN = "RP-PTL-060";
  private static final FieldNumber DOMAIN = new FieldNumber(1, 13);
  private static final int MAX_GUESSES = 4;

  /** What else stands in the field may be somebody's name. */
  private static final Pattern LIKE_A_CODE = Pattern.compile("[A-Za-z0-9_-]{1,16}");

  @Override
  public Set<String> ids() {
    return Set.of(NOT_LISTED, UNKNOWN_DOMAIN);
  }

  @Override
  public void check(ExaminationInput examinee, FindingLog log) {
    TransactionKind kind = new TransactionKind(examinee.transaction(), examinee.tables());
    Optional<String> type = examinee.transaction().typeOfTransaction();
    if (type.isEmpty() || kind.listed().isPresent() || agencyLists(examinee, type.get())) {
      return;
    }
    if (kind.isOfListedDomain()) {
      log.add(
          NOT_LISTED,
          at(examinee, TransactionKind.FIELD),
          observed(type.get()),
          wanted(type.get(), examinee));
    } else {
      log.add(
          UNKNOWN_DOMAIN,
          at(examinee, DOMAIN),
          Observed.of("a domain other than NORAM"),
          "a domain with known types of transaction");
    }
  }

  /** An agency may have types of its own, and its profile then says which. */
  private static boolean agencyLists(ExaminationInput examinee, String type) {
    return examinee.options().agency().stream()
        .flatMap(agency -> agency.fields().stream())
        .filter(field -> field.number().equals(TransactionKind.FIELD))
        .flatMap(field -> field.values().stream())
        .anyMatch(
            values ->
                values.matches(
                    type, (table, code) -> examinee.tables().codes(table).find(code).isPresent()));
  }

  private static Location at(ExaminationInput examinee, FieldNumber number) {
    LogicalRecord header = examinee.transaction().header().orElseThrow();
    return header
        .field(number)
        .map(field -> Location.of(header, field))
        .orElse(Location.of(header));
  }

  private static Observed observed(String type) {
    String words = "\"" + type + "\"";
    return LIKE_A_CODE.matcher(type).matches() ? Observed.of(words) : Observed.personal(words);
  }

  private static String wanted(String type, ExaminationInput examinee) {
    List<Code> codes = examinee.tables().codes(TransactionKind.TABLE).codes();
    String capitals = type.strip().toUpperCase(Locale.ROOT);
    if (codes.stream().anyMatch(code -> code.code().equals(capitals))) {
      return capitals + " (codes are in capital letters, without spaces)";
    }
    List<String> near =
        codes.stream()
            .map(Code::code)
            .filter(code -> isOneLetterOff(code, capitals))
            .limit(MAX_GUESSES)
            .toList();
    return near.isEmpty()
        ? "a published type of transaction"
        : "a published type of transaction; similar codes: " + String.join(", ", near);
  }

  /** One letter wrong, left out or too many, or two neighbours swapped. */
  static boolean isOneLetterOff(String code, String other) {
    int start = 0;
    int shorter = Math.min(code.length(), other.length());
    while (start < shorter && code.charAt(start) == other.charAt(start)) {
      start++;
    }
    String left = code.substring(start);
    String right = other.substring(start);
    if (left.isEmpty() || right.isEmpty()) {
      return left.length() + right.length() == 1;
    }
    boolean swapped =
        left.length() > 1
            && right.length() > 1
            && left.charAt(0) == right.charAt(1)
            && left.charAt(1) == right.charAt(0)
            && left.substring(2).equals(right.substring(2));
    return swapped
        || left.substring(1).equals(right.substring(1))
        || left.substring(1).equals(right)
        || left.equals(right.substring(1));
  }
}
