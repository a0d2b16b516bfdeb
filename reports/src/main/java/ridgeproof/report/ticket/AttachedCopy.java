package ridgeproof.report.ticket;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import ridgeproof.examination.safecopy.FindingChange;
import ridgeproof.examination.safecopy.SafeCopy;
import ridgeproof.finding.Finding;
import ridgeproof.report.FileFacts;
import ridgeproof.report.TextSanitizer;
import ridgeproof.report.ticket.Ticket.Line;
import ridgeproof.report.ticket.Ticket.Section;
import ridgeproof.report.words.Counted;

/**
 * A safe copy that goes with a ticket.
 *
 * @param file the copy's own name, size and SHA-256
 */
public record AttachedCopy(FileFacts file, SafeCopy copy) {

  private static final int MAX_RECORDS = 20;

  Section section() {
    List<Line> lines = new ArrayList<>();
    lines.add(
        new Line.Prose(
            "A copy of the file is attached to this ticket. Its layout is that of the file byte for"
                + " byte, with made-up biographic data. Its images are synthetic prints or blank. It"
                + " still shows which prints are present and which are missing, how long values are, and roughly how far"
                + " apart dates are."));
    fact(lines, "Name", file.name());
    fact(lines, "Size", Counted.of(file.bytes(), "byte"));
    fact(lines, "SHA-256", file.sha256());
    lines.add(
        new Line.Prose(
            copy.lost().isEmpty()
                ? "An examination of the copy shows every finding of the file."
                : "An examination of the copy does not show every finding of the file."));
    lines.addAll(grouped("Not reproduced in the copy: ", copy.lost()));
    lines.addAll(grouped("Only in the copy: ", copy.gained()));
    return new Section("Safe copy", List.copyOf(lines));
  }

  private static void fact(List<Line> lines, String name, String value) {
    lines.add(new Line.Fact(name, TextSanitizer.of(value)));
  }

  private static List<Line> grouped(String lead, List<FindingChange> changes) {
    Map<String, List<FindingChange>> groups =
        changes.stream()
            .collect(
                Collectors.groupingBy(
                    change -> change.finding().ruleId() + change.reason(),
                    LinkedHashMap::new,
                    Collectors.toList()));
    return groups.values().stream()
        .<Line>map(group -> new Line.Prose(lead + sentence(group)))
        .toList();
  }

  private static String sentence(List<FindingChange> group) {
    Finding first = group.get(0).finding();
    return first.ruleId()
        + " "
        + first.rule().title()
        + " ("
        + places(group)
        + "): "
        + group.get(0).reason().inWords()
        + ".";
  }

  private static String places(List<FindingChange> group) {
    List<Integer> records =
        group.stream()
            .flatMap(change -> change.finding().location().record().stream().boxed())
            .distinct()
            .toList();
    if (records.isEmpty()) {
      return "the file as a whole";
    }
    return (records.size() == 1 ? "record " : "records ")
        + records.stream().limit(MAX_RECORDS).map(String::valueOf).collect(Collectors.joining(", "))
        + (records.size() > MAX_RECORDS ? ", ..." : "");
  }
}
