package ridgeproof.report.ticket;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.safecopy.FindingChange;
import ridgeproof.examination.safecopy.FindingChange.Reason;
import ridgeproof.examination.safecopy.SafeCopy;
import ridgeproof.finding.Location;
import ridgeproof.report.FileFacts;
import ridgeproof.report.ticket.Ticket.Line;
import ridgeproof.report.ticket.Ticket.Section;
import ridgeproof.transaction.record.ByteSource;

/** What a ticket says of the safe copy that goes with it. */
class AttachedCopyTest {

  private static final String RULE = "RP-IMG-990";

  private static List<FindingChange> lost(int... records) {
    return IntStream.of(records)
        .mapToObj(r -> MadeTicket.change(RULE, MadeTicket.record(r), Reason.IMAGE_REPLACED))
        .toList();
  }

  /** The lines after those that every copy has. */
  private static List<Line> changes(List<FindingChange> lost, List<FindingChange> gained) {
    List<Line> lines = MadeTicket.copy(lost, gained).section().lines();
    return lines.subList(5, lines.size());
  }

  @Test
  void aCopyIsNamedAndSaidToShowEveryFinding() {
    FileFacts file = new FileFacts("copy\u202e.an2", 1234, "b".repeat(64));
    AttachedCopy copy =
        new AttachedCopy(
            file, new SafeCopy(ByteSource.of(new byte[0]), List.of(), List.of(), true));
    assertEquals(
        new Section(
            "Safe copy",
            List.of(
                new Line.Prose(
                    "A copy of the file is attached to this ticket. Its layout is that of the file"
                        + " byte for byte, with made-up biographic data. Its images are synthetic"
                        + " prints or blank. It still shows which prints are present and which are"
                        + " missing, how long values are, and roughly how far apart dates are."),
                new Line.Fact("Name", "copy\\u202E.an2"),
                new Line.Fact("Size", "1,234 bytes"),
                new Line.Fact("SHA-256", "b".repeat(64)),
                new Line.Prose("An examination of the copy shows every finding of the file."))),
        copy.section());
  }

  @Test
  void whatTheCopyDoesNotShowIsToldByRuleAndReasonWithItsRecords() {
    List<FindingChange> lost = new ArrayList<>(lost(3, 4, 3));
    lost.add(MadeTicket.change(RULE, MadeTicket.record(5), Reason.VALUE_REPLACED));
    lost.add(MadeTicket.change("RP-SEQ-990", Location.file(), Reason.FINGERS_REPLACED));
    assertEquals(
        List.of(
            new Line.Prose(
                "Not reproduced in the copy: RP-IMG-990 Title of RP-IMG-990 (records 3, 4): the"
                    + " image was replaced."),
            new Line.Prose(
                "Not reproduced in the copy: RP-IMG-990 Title of RP-IMG-990 (record 5): the value"
                    + " was replaced."),
            new Line.Prose(
                "Not reproduced in the copy: RP-SEQ-990 Title of RP-SEQ-990 (the file as a whole):"
                    + " the fingers were replaced with the images.")),
        changes(lost, List.of()));
    assertEquals(
        new Line.Prose("An examination of the copy does not show every finding of the file."),
        MadeTicket.copy(lost, List.of()).section().lines().get(4));
  }

  @Test
  void whatOnlyTheCopyShowsIsTold() {
    assertEquals(
        List.of(
            new Line.Prose(
                "Only in the copy: RP-IMG-990 Title of RP-IMG-990 (record 3): the image was"
                    + " replaced.")),
        changes(List.of(), lost(3)));
  }

  @Test
  void twentyRecordsAreNamedAndNoMore() {
    String twenty =
        "Not reproduced in the copy: RP-IMG-990 Title of RP-IMG-990 (records 3, 4, 5, 6, 7, 8, 9,"
            + " 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20, 21, 22";
    assertEquals(
        List.of(new Line.Prose(twenty + "): the image was replaced.")),
        changes(lost(IntStream.rangeClosed(3, 22).toArray()), List.of()));
    assertEquals(
        List.of(new Line.Prose(twenty + ", ...): the image was replaced.")),
        changes(lost(IntStream.rangeClosed(3, 23).toArray()), List.of()));
  }
}
