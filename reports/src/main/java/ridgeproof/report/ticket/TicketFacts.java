package ridgeproof.report.ticket;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.imagery.ImageHeader;
import ridgeproof.report.FieldValues;
import ridgeproof.report.TextSanitizer;
import ridgeproof.report.ticket.Ticket.Line;
import ridgeproof.report.words.Counted;
import ridgeproof.spec.consistency.CaptureOrigin;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.layout.FieldRow;
import ridgeproof.transaction.record.Field;
import ridgeproof.transaction.record.LogicalRecord;
import ridgeproof.transaction.record.Subfield;

/** What the file says of the station and of the encoder that made it. */
final class TicketFacts {

  private static final int MAX_ENCODINGS = 8;

  private final FindingsReport report;
  private final FieldValues values;

  TicketFacts(FindingsReport report) {
    this.report = report;
    this.values = new FieldValues(report.tables(), report.transaction().version(), false);
  }

  /** Make, model and software of the station; serial numbers are masked. */
  List<Line> station() {
    List<Line> lines = new ArrayList<>();
    for (CaptureOrigin origin : report.tables().captureOrigins()) {
      if (origin.kind() == CaptureOrigin.Kind.STATION) {
        found(origin.field())
            .forEach(
                text -> lines.add(new Line.Fact(name(origin.field()), TextSanitizer.of(text))));
      }
    }
    if (lines.isEmpty()) {
      lines.add(
          new Line.Prose(
              "The file does not name the station. Please add make, model and software version."));
    }
    return lines;
  }

  private String name(FieldNumber field) {
    String name = values.row(field).map(FieldRow::name).orElse("Field");
    return name + " (" + field + ")";
  }

  /** Each value once, for all images of a station say the same. */
  private Set<String> found(FieldNumber field) {
    Set<String> found = new LinkedHashSet<>();
    for (LogicalRecord record : report.transaction().recordsOfType(field.recordType())) {
      for (Field present : record.field(field).stream().toList()) {
        for (Subfield subfield : present.subfields()) {
          found.add(values.items(field, subfield));
        }
      }
    }
    return found;
  }

  /** What the encoder wrote into the images, alike images once. */
  List<Line> encoder() {
    Map<String, List<Integer>> encodings = new LinkedHashMap<>();
    for (ExaminedImage image : report.images()) {
      image
          .header()
          .ifPresent(
              header ->
                  encodings
                      .computeIfAbsent(words(header), key -> new ArrayList<>())
                      .add(image.record().ordinal()));
    }
    List<Line> lines = new ArrayList<>();
    encodings.entrySet().stream()
        .limit(MAX_ENCODINGS)
        .forEach(entry -> lines.add(new Line.Fact(records(entry.getValue()), entry.getKey())));
    if (encodings.size() > MAX_ENCODINGS) {
      lines.add(
          new Line.Prose(
              "and " + Counted.of(encodings.size() - MAX_ENCODINGS, "more encoding") + "."));
    }
    if (lines.isEmpty()) {
      lines.add(new Line.Prose("No image was opened."));
    }
    return lines;
  }

  private static String records(List<Integer> ordinals) {
    return (ordinals.size() == 1 ? "Record " : "Records ")
        + ordinals.stream().map(String::valueOf).collect(Collectors.joining(", "));
  }

  /** Format, facts of the codestream, and those comments that name nobody. */
  private String words(ImageHeader header) {
    List<String> parts = new ArrayList<>();
    parts.add(header.format().label());
    header.lossless().ifPresent(lossless -> parts.add(lossless ? "lossless" : "lossy"));
    header.facts().forEach((name, value) -> parts.add(name + " " + value));
    int others = 0;
    for (Map.Entry<String, String> comment : header.comments().entrySet()) {
      boolean harmless =
          report
              .tables()
              .harmless()
              .isHarmlessComment(comment.getKey(), comment.getValue().strip());
      if (harmless) {
        parts.add("comment " + comment.getKey() + " " + comment.getValue().strip());
      } else {
        others++;
      }
    }
    if (others > 0) {
      parts.add(Counted.of(others, "comment") + " masked");
    }
    return TextSanitizer.of(String.join("; ", parts));
  }
}
