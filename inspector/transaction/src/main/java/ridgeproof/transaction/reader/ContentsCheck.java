package ridgeproof.transaction.reader;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import ridgeproof.finding.Location;
import ridgeproof.finding.Observed;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.transaction.record.LogicalRecord;

/** Holds the records that were read against field 1.003 (CNT). */
final class ContentsCheck {

  private static final FieldNumber CNT = new FieldNumber(1, 3);

  private final ParseContext context;
  private final TransactionContent contents;
  private final LogicalRecord header;
  private final List<LogicalRecord> records;

  ContentsCheck(ParseContext context, TransactionContent contents, List<LogicalRecord> records) {
    this.context = context;
    this.contents = contents;
    this.header = records.get(0);
    this.records = records.subList(1, records.size());
  }

  void run() {
    if (header.field(CNT).isEmpty() || contents.stated().isEmpty()) {
      report(
          "RP-STR-017",
          Observed.of(header.field(CNT).isEmpty() ? "no CNT" : "CNT without a count"),
          "the number of records that follow, then the type and IDC of each");
      return;
    }
    int entries = contents.entries().size();
    int stated = contents.stated().getAsInt();
    if (stated != records.size() || stated != entries) {
      report(
          "RP-STR-014",
          Observed.of(
              String.format(
                  Locale.ROOT,
                  "CNT states %d and lists %d; the file has %d",
                  stated,
                  entries,
                  records.size())),
          "one entry for each record after the first");
    }
    comparePairs();
  }

  private void comparePairs() {
    List<TransactionContent.Entry> present = present();
    if (present.equals(contents.entries())) {
      return;
    }
    List<TransactionContent.Entry> missing = without(contents.entries(), present);
    List<TransactionContent.Entry> extra = without(present, contents.entries());
    if (missing.isEmpty() && extra.isEmpty()) {
      int first = firstDifference(present);
      report(
          "RP-STR-015",
          Observed.of("record " + records.get(first).ordinal() + " is " + present.get(first)),
          contents.entries().get(first).toString());
      return;
    }
    if (sameTypes(present)) {
      for (int i = 0; i < present.size(); i++) {
        if (!present.get(i).equals(contents.entries().get(i))) {
          context.log.add(
              "RP-STR-016",
              Location.of(records.get(i)),
              Observed.of(present.get(i).toString()),
              contents.entries().get(i).toString());
        }
      }
      return;
    }
    if (contents.stated().getAsInt() == records.size()
        && contents.entries().size() == records.size()) {
      report("RP-STR-014", Observed.of(list("in the file", extra)), list("listed", missing));
    }
  }

  private List<TransactionContent.Entry> present() {
    List<TransactionContent.Entry> present = new ArrayList<>();
    for (LogicalRecord record : records) {
      present.add(new TransactionContent.Entry(record.type(), record.idc().orElse(-1)));
    }
    return present;
  }

  private boolean sameTypes(List<TransactionContent.Entry> present) {
    return present.stream()
        .map(TransactionContent.Entry::type)
        .toList()
        .equals(contents.entries().stream().map(TransactionContent.Entry::type).toList());
  }

  private int firstDifference(List<TransactionContent.Entry> present) {
    int i = 0;
    while (present.get(i).equals(contents.entries().get(i))) {
      i++;
    }
    return i;
  }

  private static List<TransactionContent.Entry> without(
      List<TransactionContent.Entry> all, List<TransactionContent.Entry> taken) {
    List<TransactionContent.Entry> rest = new ArrayList<>(all);
    taken.forEach(rest::remove);
    return rest;
  }

  private static String list(String lead, List<TransactionContent.Entry> entries) {
    return entries.isEmpty() ? "nothing more " + lead : lead + ": " + join(entries);
  }

  private static String join(List<TransactionContent.Entry> entries) {
    return String.join(", ", entries.stream().limit(4).map(Object::toString).toList())
        + (entries.size() > 4 ? ", ..." : "");
  }

  private void report(String rule, Observed observed, String required) {
    Location place = Location.of(header).in(CNT);
    context.log.add(
        rule,
        header.field(CNT).map(field -> place.at(field.range())).orElse(place),
        observed,
        required);
  }
}
