package ridgeproof.report.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.message.Explanation;
import ridgeproof.report.Reports;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.rule.BureauMessage;
import ridgeproof.spec.table.Source;

/** What is said of a bureau's message. */
class MessageListingTest {

  private static final MessageListing LISTING = new MessageListing(Reports.TABLES);

  private static BureauMessage message(String code, String place, List<String> rules) {
    return new BureauMessage(
        "Prints are dry",
        Optional.of(code).filter(text -> !text.isEmpty()),
        List.of(),
        "The prints do not show enough.",
        "Recapture the prints.",
        rules,
        new Source("TRADE", place, Source.Knowledge.COMMON_PRACTICE));
  }

  private static final BureauMessage BY_CODE =
      message("Q0001", "capture", List.of("RP-RDG-004", "RP-RDG-005"));
  private static final BureauMessage BY_WORDS = message("", "", List.of("RP-RDG-004"));
  private static final BureauMessage FAMILY = message("Q*", "", List.of("RP-RDG-004"));

  private static final Explanation WHOLE =
      new Explanation(
          "Q0001 Q7777 quality\u001b of 2.020 and 2.777",
          List.of(BY_CODE),
          List.of("Q7777"),
          List.of(FAMILY),
          List.of(BY_WORDS),
          List.of(new FieldNumber(2, 20), new FieldNumber(1, 777)));

  private static final Explanation UNKNOWN =
      new Explanation("nonesuch", List.of(), List.of(), List.of(), List.of(), List.of());

  @Test
  void allThatIsKnownIsToldTheSurestFirst() {
    assertEquals(
        """
        Q7777 is not in the published list of message codes.

        Q0001  Prints are dry
          meaning     The prints do not show enough.
          what to do  Recapture the prints.
          rules       RP-RDG-004 Print is too dry
                      RP-RDG-005 Print is too dark
          found by    code
          source      What practitioners of ten-print capture agree on, capture (common
                      practice)

        Prints are dry
          meaning     The prints do not show enough.
          what to do  Recapture the prints.
          rules       RP-RDG-004 Print is too dry
          found by    words of the message
          source      What practitioners of ten-print capture agree on (common practice)

        Prints are dry
          meaning     The prints do not show enough.
          what to do  Recapture the prints.
          rules       RP-RDG-004 Print is too dry
          found by    first letter of the code
          source      What practitioners of ten-print capture agree on (common practice)

        Field 2.020 is: Place of birth.

        To find the cause in your file, run: ridgeproof examine FILE. The bureau's own
        specification decides what a message means.
        """,
        LISTING.text(WHOLE));
  }

  @Test
  void aMessageThatBeginsTheTextHasNoLineAboveIt() {
    Explanation one =
        new Explanation("Q0001", List.of(BY_CODE), List.of(), List.of(), List.of(), List.of());
    assertTrue(LISTING.text(one).startsWith("Q0001  Prints are dry\n"), LISTING.text(one));
  }

  @Test
  void ofAnUnknownMessageTheBureauIsToBeAsked() {
    assertEquals(
        """
        No explanation is known for this message. Ask the bureau what it means, and
        check the file with: ridgeproof examine FILE
        """,
        LISTING.text(UNKNOWN));
  }

  @Test
  void ofMoreThanTwelveRulesTheRestIsCounted() {
    assertEquals(12, rules(12).size());
    List<String> twelve = rules(14);
    assertEquals(13, twelve.size());
    assertEquals("              and 2 more", twelve.get(12));
  }

  /** The lines that name rules. */
  private static List<String> rules(int count) {
    BureauMessage message =
        message("Q0001", "", new ArrayList<>(Collections.nCopies(count, "RP-RDG-004")));
    Explanation one =
        new Explanation("Q0001", List.of(message), List.of(), List.of(), List.of(), List.of());
    return LISTING
        .text(one)
        .lines()
        .dropWhile(line -> !line.startsWith("  rules"))
        .takeWhile(line -> !line.startsWith("  found by"))
        .toList();
  }

  @Test
  void theListHasALineAMessageWithHowItIsKnown() {
    String list = LISTING.list();
    assertTrue(list.contains("\nL0008   Print quality is too low (published)\n"), list);
    assertTrue(list.contains("\n        Name is not valid (common practice)\n"), list);
    assertEquals(Reports.TABLES.bureauMessages().size(), list.lines().count());
  }

  @Test
  void aProgramReadsTheSame() {
    assertEquals(
        """
        {
          "schema" : "ridgeproof-message",
          "schemaVersion" : 1,
          "message" : "Q0001 Q7777 quality\\\\x1B of 2.020 and 2.777",
          "known" : true,
          "unlistedCodes" : [ "Q7777" ],
          "explanations" : [ {
            "title" : "Prints are dry",
            "code" : "Q0001",
            "foundBy" : "code",
            "meaning" : "The prints do not show enough.",
            "whatToDo" : "Recapture the prints.",
            "rules" : [ "RP-RDG-004", "RP-RDG-005" ],
            "source" : "What practitioners of ten-print capture agree on, capture (common practice)",
            "known" : "common practice"
          }, {
            "title" : "Prints are dry",
            "foundBy" : "words",
            "meaning" : "The prints do not show enough.",
            "whatToDo" : "Recapture the prints.",
            "rules" : [ "RP-RDG-004" ],
            "source" : "What practitioners of ten-print capture agree on (common practice)",
            "known" : "common practice"
          }, {
            "title" : "Prints are dry",
            "code" : "Q*",
            "foundBy" : "first letter",
            "meaning" : "The prints do not show enough.",
            "whatToDo" : "Recapture the prints.",
            "rules" : [ "RP-RDG-004" ],
            "source" : "What practitioners of ten-print capture agree on (common practice)",
            "known" : "common practice"
          } ]
        }""",
        LISTING.json(WHOLE));
    assertEquals(false, Reports.parse(LISTING.json(UNKNOWN)).get("known").asBoolean());
  }
}
