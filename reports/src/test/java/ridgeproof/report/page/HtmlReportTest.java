package ridgeproof.report.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.facts.Depth;
import ridgeproof.report.PilotCard;
import ridgeproof.report.RenderOptions;
import ridgeproof.report.Reports;
import ridgeproof.report.page.ReportModel.PositionRow;
import ridgeproof.report.picture.Picture;
import ridgeproof.testing.ReferenceFiles;
import ridgeproof.transaction.record.CharacterEncoding;

class HtmlReportTest {

  private static String page(byte[] bytes) {
    return HtmlReport.render(
        Reports.facts(bytes), Reports.examine(bytes, Depth.IMAGES), RenderOptions.standard());
  }

  private static Map<Integer, PositionState> states(PilotCard card) {
    return states(Reports.examine(card.bytes(), Depth.STRUCTURE));
  }

  private static Map<Integer, PositionState> states(FindingsReport report) {
    Map<Integer, PositionState> states = new TreeMap<>();
    for (PositionRow row : new PositionStates(report).rows()) {
      states.put(row.code(), row.state());
    }
    return states;
  }

  private static List<String> all(String pattern, String text) {
    List<String> found = new ArrayList<>();
    Matcher matcher = Pattern.compile(pattern).matcher(text);
    while (matcher.find()) {
      found.add(matcher.group(1));
    }
    return found;
  }

  @Test
  void everyAnchorIsUniqueAndEveryLinkLeadsToOne() throws IOException {
    List<byte[]> files = new ArrayList<>(List.of(PilotCard.ascii().without(4).bytes()));
    for (Path file : ReferenceFiles.all()) {
      files.add(Files.readAllBytes(file));
    }
    for (byte[] bytes : files) {
      String page = page(bytes);
      List<String> anchors = all(" id=\"([^\"]*)\"", page);
      assertEquals(anchors.stream().distinct().toList(), anchors);
      for (String link : all(" href=\"#([^\"]*)\"", page)) {
        assertTrue(anchors.contains(link), link);
      }
      for (String label : all(" aria-labelledby=\"([^\"]*)\"", page)) {
        assertTrue(anchors.containsAll(List.of(label.split(" "))), label);
      }
    }
  }

  @Test
  void thePolicyAdmitsThePagesOwnStyleAndNothingElse() throws NoSuchAlgorithmException {
    String page = page(PilotCard.ascii().bytes());
    String style = all("(?s)<style>(.*?)</style>", page).get(0);
    byte[] digest =
        MessageDigest.getInstance("SHA-256").digest(style.getBytes(StandardCharsets.UTF_8));
    String policy = all("Policy\" content=\"([^\"]*)\"", page).get(0).replace("&#39;", "'");
    assertEquals(
        "default-src 'none'; style-src 'sha256-"
            + Base64.getEncoder().encodeToString(digest)
            + "'; img-src data:; base-uri 'none'; form-action 'none'",
        policy);
    assertFalse(page.contains("<script"), "a script");
    assertFalse(page.contains(" style=\""), "a style that the policy forbids");
    assertFalse(style.contains("url("), "a style that loads something");
    assertFalse(style.contains("@import"), "a style that loads something");
  }

  @Test
  void theHandsSayWhatIsPresentAndWhatIsMissing() {
    Map<Integer, PositionState> states = states(PilotCard.ascii().without(4));
    assertEquals(PositionState.PRESENT, states.get(3));
    assertEquals(PositionState.MISSING, states.get(4));
    assertEquals(14, states.size());
  }

  @Test
  void handsAreDrawnWhereAFingerIsThereOrAskedForAndNotBesideAJointOrAPalmAlone() {
    List<PositionRow> card =
        new PositionStates(Reports.examine(PilotCard.ascii().bytes(), Depth.STRUCTURE)).rows();
    assertEquals(2, HandDiagram.of(card).size());
    List<PositionRow> jointAlone = new ArrayList<>();
    card.forEach(row -> jointAlone.add(as(row, row.code(), PositionState.NOT_ASKED)));
    jointAlone.add(as(card.get(0), 19, PositionState.PRESENT));
    assertEquals(List.of(), HandDiagram.of(jointAlone));
    jointAlone.set(3, as(card.get(3), 4, PositionState.ACCOUNTED));
    assertEquals(2, HandDiagram.of(jointAlone).size());
  }

  private static PositionRow as(PositionRow row, int code, PositionState state) {
    List<PositionRow> fingers =
        row.fingers().stream().map(finger -> as(finger, finger.code(), state)).toList();
    return new PositionRow(code, row.name(), state, row.note(), row.image(), fingers);
  }

  @Test
  void aPrintThatWasNotLookedForIsNotCalledMissingFromItsImage() {
    byte[] annotated = PilotCard.ascii().particular(84, "4\u001fXX").bytes();
    FindingsReport report = Reports.examine(annotated, Depth.IMAGES);
    assertTrue(report.findings().stream().anyMatch(f -> f.ruleId().equals("RP-TXN-005")));
    String page = page(annotated);
    assertTrue(page.contains("Right ring finger"), "a picture at the step");
    assertFalse(page.contains("No print was found"), "of a print nobody looked for");
  }

  @Test
  void aMissingFingerThatTheFileAccountsForIsNotCalledMissing() {
    Map<Integer, PositionState> states =
        states(PilotCard.ascii().without(4).particular(84, "4\u001fXX"));
    assertEquals(PositionState.ACCOUNTED, states.get(4));
  }

  @Test
  void anImageWithAGraveFindingIsToBeLookedAtAgain() {
    PilotCard card = new PilotCard(CharacterEncoding.ASCII).print(8, "7");
    assertEquals(PositionState.DOUBTFUL, states(card).get(1));
  }

  @Test
  void rolledFingersAreNotAskedForWhereOnlyFlatsAreSent() {
    Map<Integer, PositionState> states = states(PilotCard.ascii().inOrder(List.of(11, 12, 13, 14)));
    assertEquals(PositionState.NOT_ASKED, states.get(1));
    assertEquals(PositionState.PRESENT, states.get(13));
    assertFalse(states.containsKey(15), "thumbs apart stand for the thumbs together");
  }

  @Test
  void halvesOfTheMissingThumbsTogetherAreMissing() {
    byte[] bytes = PilotCard.ascii().inOrder(List.of(13, 14)).bytes();
    Map<Integer, PositionState> states = states(Reports.examineAs("identification-flats", bytes));
    assertEquals(PositionState.MISSING, states.get(11));
    assertEquals(PositionState.MISSING, states.get(12));
    assertEquals(PositionState.MISSING, states.get(15));
  }

  @Test
  void everyFindingStandsOnThePageOnce() {
    byte[] bytes = PilotCard.ascii().without(4).header(5, "20261399").print(8, "7").bytes();
    int findings = Reports.examine(bytes, Depth.IMAGES).findings().size();
    assertEquals(findings, all("class=\"note [a-z]+\" id=\"(f\\d+)\"", page(bytes)).size());
    assertTrue(findings > 10);
  }

  @Test
  void everyPositionIsToldInWordsToo() {
    String page = page(PilotCard.ascii().without(4).bytes());
    assertTrue(
        page.contains(
            "<tr class=\"missing\"><td>4</td><th scope=\"row\">right ring finger</th>"
                + "<td><span class=\"state\">missing</span>"),
        page);
  }

  @Test
  void aFileThatIsNoTransactionHasAPageToo() {
    assertTrue(page(new byte[] {1, 2, 3}).contains("No record could be read."));
  }

  @Test
  void anImageIsDrawnAtItsTrueProportionWithAScale() {
    var image = Reports.examine(ReferenceFiles.read("type-4-tpcard.an2"), Depth.STRUCTURE);
    Picture picture = Picture.of(image.images().get(0), "", "", "", "", java.util.Optional.empty());
    assertEquals(804 / 500.0 * 25.4, picture.width(), 0.05);
    assertEquals(752 / 500.0 * 25.4, picture.height(), 0.05);
    assertEquals(10, picture.bar(), 1e-9);
  }
}
