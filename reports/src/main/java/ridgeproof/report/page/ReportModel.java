package ridgeproof.report.page;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import ridgeproof.report.picture.Picture;
import ridgeproof.report.prints.PrintPicture;

/**
 * What the templates of the HTML report are filled with; every text is inert already.
 *
 * @param unfolded whether mere facts and the tables of fields are open
 */
public record ReportModel(
    HtmlHead head,
    String fileName,
    String verdict,
    String verdictWords,
    String counts,
    boolean personalShown,
    List<Fact> facts,
    List<String> relaxed,
    List<Step> steps,
    List<HandDiagram> hands,
    List<PositionRow> positions,
    String sequence,
    boolean imagesShown,
    List<Picture> pictures,
    List<FindingNote> wholeFile,
    List<RecordPart> records,
    List<RuleNote> rules,
    List<Fact> documents,
    List<String> cautions,
    boolean unfolded) {

  /** The positions that the file should have, or has. */
  public List<PositionRow> asked() {
    return positions.stream()
        .filter(row -> row.state() != PositionState.NOT_ASKED)
        .flatMap(row -> Stream.concat(Stream.of(row), row.noted().stream()))
        .toList();
  }

  /** The other positions in words. */
  public String notAsked() {
    return positions.stream()
        .filter(row -> row.state() == PositionState.NOT_ASKED)
        .map(row -> row.code() + " " + row.name())
        .collect(Collectors.joining("; "));
  }

  /** The findings about the whole file that ask for something. */
  public List<FindingNote> asking() {
    return wholeFile.stream().filter(note -> !note.isFact()).toList();
  }

  /** Mere facts about the whole file. */
  public List<FindingNote> wholeFileFacts() {
    return wholeFile.stream().filter(FindingNote::isFact).toList();
  }

  /** Whether there is something to show over the images. */
  public boolean hasOverlays() {
    return pictures.stream().anyMatch(picture -> picture.overlay().isPresent());
  }

  /** Whether some record or field has a finding beside it, so that one may ask for those alone. */
  public boolean hasFindingsInRecords() {
    return records.stream().anyMatch(record -> !record.quiet());
  }

  /**
   * A name and a value.
   *
   * @param verbatim whether the value is to be read letter by letter
   */
  public record Fact(String name, String value, boolean verbatim) {}

  /** Something to do, with the findings that it answers. */
  public record Step(
      String severity,
      String remedy,
      String rules,
      List<Link> places,
      int furtherPlaces,
      List<StepPicture> pictures) {}

  /**
   * A print beside a step.
   *
   * @param source its pixels as a data address, where they are shown
   */
  public record StepPicture(PrintPicture print, String anchor, Optional<String> source) {}

  /** A link within the page. */
  public record Link(String target, String text) {}

  /** A friction ridge position, what there is of it, and where to read on. */
  public record PositionRow(
      int code,
      String name,
      PositionState state,
      String note,
      Optional<Link> image,
      List<PositionRow> fingers) {

    /** The fingers of a slap of which something is to be said. */
    public List<PositionRow> noted() {
      return fingers.stream().filter(finger -> !finger.note().isEmpty()).toList();
    }
  }

  /** A finding beside the field or record that it is about. */
  public record FindingNote(
      String anchor,
      String severity,
      String rule,
      String title,
      String place,
      String places,
      String explains,
      String found,
      String required,
      List<String> measures,
      Optional<String> why,
      String field) {

    /** Whether it is a mere fact, which is folded away. */
    public boolean isFact() {
      return severity.equals("NOTE");
    }

    /** The same, linked to the row of its field. */
    public FindingNote beside(String anchor) {
      return new FindingNote(
          this.anchor,
          severity,
          rule,
          title,
          place,
          places,
          explains,
          found,
          required,
          measures,
          why,
          anchor);
    }
  }

  /** A record and what it holds. */
  public record RecordPart(
      String anchor,
      String title,
      String extent,
      String image,
      List<FindingNote> findings,
      List<FieldPart> fields,
      int furtherFields) {

    /** Whether no finding is about the record or one of its fields. */
    public boolean quiet() {
      return findings.isEmpty();
    }

    /** The findings that ask for something. */
    public List<FindingNote> asking() {
      return findings.stream().filter(note -> !note.isFact()).toList();
    }

    /** Mere facts. */
    public List<FindingNote> facts() {
      return findings.stream().filter(FindingNote::isFact).toList();
    }
  }

  /**
   * A field and its values.
   *
   * @param findings anchors of the findings about it
   */
  public record FieldPart(
      String anchor,
      int offset,
      int length,
      String number,
      String mnemonic,
      String name,
      List<String> values,
      int furtherValues,
      List<String> findings) {}

  /** A rule that the report cites. */
  public record RuleNote(
      String id, String severity, String title, String explanation, String remedy, String source) {}
}
