package ridgeproof.report.ticket;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ridgeproof.report.ticket.Ticket.Line;
import ridgeproof.report.ticket.Ticket.Section;

/** How lines are set in the forms that people read. */
class TicketFormsTest {

  private static String text(Line line) {
    String text = TicketText.render(List.of(new Section("File", List.of(line))));
    return text.substring("RIDGEPROOF TICKET\n\nFile\n----\n".length());
  }

  private static String markdown(Line line) {
    String text = TicketMarkdown.render(List.of(new Section("File", List.of(line))));
    return text.substring("# Ridgeproof ticket\n\n## File\n\n".length());
  }

  @Test
  void aHashThatFitsBesideItsNameStandsThere() {
    assertEquals(
        "  Hash                  " + "a".repeat(48) + "\n",
        text(new Line.Fact("Hash", "a".repeat(48))));
  }

  @Test
  void aHashThatWouldBeCutBesideItsNameStandsBelowIt() {
    assertEquals(
        "  Hash\n    " + "a".repeat(49) + "\n", text(new Line.Fact("Hash", "a".repeat(49))));
  }

  @Test
  void aLongValueOfWordsIsBrokenBesideItsName() {
    assertEquals(
        "  Value                 " + "a".repeat(40) + "\n" + " ".repeat(24) + "b".repeat(9) + "\n",
        text(new Line.Fact("Value", "a".repeat(40) + " " + "b".repeat(9))));
  }

  @Test
  void aNameThatLeavesABlankStandsBesideItsValue() {
    assertEquals("  " + "n".repeat(21) + " value\n", text(new Line.Fact("n".repeat(21), "value")));
    assertEquals(
        "  " + "n".repeat(22) + "\n    value\n", text(new Line.Fact("n".repeat(22), "value")));
  }

  @Test
  void noWordOfOursIsACommandOfMarkdown() {
    assertEquals(
        "\nA\\\\B\\`C\\*D\\_E\\{F\\}G\\[H\\]I\\<J\\>K\\#L\\|M\\~N\\&O\\@P\\:Q\\!R\\$S\\^T\\=U, (v)\n",
        markdown(new Line.Prose("A\\B`C*D_E{F}G[H]I<J>K#L|M~N&O@P:Q!R$S^T=U, (v)")));
  }

  @ParameterizedTest
  @CsvSource(
      value = {
        "plain|`plain`",
        "a`b|``a`b``",
        "a``b`c|```a``b`c```",
        "a`b``c|```a`b``c```",
        "`a|`` `a ``",
        "a`|`` a` ``",
        "' a'|'`  a `'",
        "'a '|'` a  `'",
        "''|'`  `'",
        "*[x](y)|`*[x](y)`"
      },
      delimiter = '|')
  void aValueStaysInItsSpanOfCode(String value, String span) {
    assertEquals("- Value: " + span + "\n", markdown(new Line.Fact("Value", value)));
  }

  @Test
  void namesPlacesAndAnswersAreNoCommandsEither() {
    assertEquals("- a\\*: `b`\n", markdown(new Line.Fact("a*", "b")));
    assertEquals("1. a\\* (b\\*)\n", markdown(new Line.Step(1, "a*", "b*")));
    assertEquals("- a\\*:\n", markdown(new Line.Room("a*")));
    assertEquals("- a\\*; found `b*`, required `c*`\n", markdown(new Line.Place("a*", "b*", "c*")));
    assertEquals("\n### a\\* b\\* c\\*\n\n", markdown(new Line.Rule("a*", "b*", "c*")));
  }
}
