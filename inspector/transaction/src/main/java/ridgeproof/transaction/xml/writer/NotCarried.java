package ridgeproof.transaction.xml.writer;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import ridgeproof.finding.Finding;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.record.Field;
import ridgeproof.transaction.record.LogicalRecord;
import ridgeproof.transaction.record.Subfield;
import ridgeproof.transaction.record.WholeNumber;

/** What no writer carries over: lengths and lists that it computes, and what was not read. */
public final class NotCarried {

  private static final int LENGTH_FIELD = 1;
  private static final int CONTENTS_FIELD = 3;
  private static final Set<String> UNKNOWN_ELEMENTS = Set.of("RP-XML-005", "RP-XML-016");

  private NotCarried() {}

  /** Bytes of no record or field, and elements that the mapping does not know. */
  public static List<Loss> unread(Transaction transaction) {
    Set<Loss> losses = new LinkedHashSet<>();
    if (!transaction.unread().isEmpty()) {
      losses.add(Loss.ofFile("bytes that belong to no record"));
    }
    for (LogicalRecord record : transaction.records()) {
      if (!record.unread().isEmpty()) {
        losses.add(of(record, Optional.empty(), "bytes that belong to no field"));
      }
    }
    for (Finding finding : transaction.findings()) {
      if (UNKNOWN_ELEMENTS.contains(finding.ruleId())) {
        losses.add(
            new Loss(
                finding.location().record().orElse(0),
                finding.location().recordType().orElse(0),
                Optional.empty(),
                "elements that no field is known for"));
      }
    }
    return List.copyOf(losses);
  }

  /** Lengths that are not those of their records; XML has none, and a writer computes them. */
  public static List<Loss> lengths(Transaction transaction) {
    List<Loss> losses = new ArrayList<>();
    for (LogicalRecord record :
        transaction.isXml() ? List.<LogicalRecord>of() : transaction.records()) {
      FieldNumber number = new FieldNumber(record.type(), LENGTH_FIELD);
      OptionalInt stated =
          record.field(number).map(Field::text).map(WholeNumber::parse).orElse(OptionalInt.empty());
      if (stated.isEmpty() || stated.getAsInt() != record.range().length()) {
        losses.add(of(record, Optional.of(number), "a length that is not that of the record"));
      }
    }
    return losses;
  }

  /** Field 1.003 where it does not list the records as they are, since a writer computes it. */
  public static List<Loss> contents(Transaction transaction) {
    LogicalRecord header = transaction.records().get(0);
    FieldNumber number = new FieldNumber(header.type(), CONTENTS_FIELD);
    List<List<Integer>> listed = new ArrayList<>();
    for (Subfield subfield : header.field(number).map(Field::subfields).orElse(List.of())) {
      listed.add(
          subfield.items().stream()
              .map(item -> WholeNumber.parse(item.text()).orElse(-1))
              .toList());
    }
    List<List<Integer>> read = new ArrayList<>();
    List<LogicalRecord> others = transaction.records().subList(1, transaction.records().size());
    read.add(List.of(1, others.size()));
    others.forEach(record -> read.add(List.of(record.type(), record.idc().orElse(0))));
    return listed.equals(read)
        ? List.of()
        : List.of(of(header, Optional.of(number), "a list that is not that of the records"));
  }

  private static Loss of(LogicalRecord record, Optional<FieldNumber> field, String reason) {
    return new Loss(record.ordinal(), record.type(), field, reason);
  }
}
