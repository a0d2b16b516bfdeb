package ridgeproof.examination.cause.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static ridgeproof.examination.cause.MeasuredCard.at;
import static ridgeproof.examination.cause.MeasuredCard.inRecord;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.SampleCard;
import ridgeproof.examination.cause.CauseLog;
import ridgeproof.examination.cause.Consequences;
import ridgeproof.examination.cause.Established;
import ridgeproof.examination.cause.MeasuredCard;
import ridgeproof.finding.Finding;
import ridgeproof.finding.FindingLog;
import ridgeproof.finding.Location;
import ridgeproof.finding.Observed;
import ridgeproof.spec.rule.Severity;

/** From how many images on a fault is one of the station, and what it then explains. */
class SharedByImagesEvidenceTest {

  private static final String[] OF_DETAIL = {
    "RP-RDG-011", "RP-RDG-012", "RP-RDG-014", "RP-RDG-015", "RP-RDG-017"
  };

  private static Finding said(String rule, int record, String observed, String required) {
    FindingLog log = new FindingLog(SampleCard.TABLES, 1);
    log.add(
        rule,
        Location.inRecord(record, 14).withPosition(OptionalInt.of(record - 2)),
        Observed.of(observed),
        required);
    return log.findings().get(0);
  }

  private static Finding[] ofImages(String rule, int images) {
    Finding[] found = new Finding[images];
    for (int i = 0; i < images; i++) {
      found[i] = at(rule, 3 + i, 1 + i);
    }
    return found;
  }

  private static MeasuredCard card(int images) {
    SampleCard card = SampleCard.rolledTagged();
    for (int record = 16; record >= 3 + images; record--) {
      card = card.without(record);
    }
    return MeasuredCard.of(card);
  }

  private static List<String> told(MeasuredCard card, Finding... found) {
    return card.told(new SharedByImagesCause(), found);
  }

  @Test
  void threeImagesThatAreFourFifthsOfAllShareIt() {
    assertEquals(
        List.of(
            "RP-IMG-011: 3 of 3 images, for example: observed; required"
                + " -> RP-IMG-011 record 3 finger 1, RP-IMG-011 record 4 finger 2,"
                + " RP-IMG-011 record 5 finger 3"),
        told(card(3), ofImages("RP-IMG-011", 3)));
    assertEquals(
        List.of(
            "RP-IMG-011: 4 of 5 images, for example: observed; required"
                + " -> RP-IMG-011 record 3 finger 1, RP-IMG-011 record 4 finger 2,"
                + " RP-IMG-011 record 5 finger 3, RP-IMG-011 record 6 finger 4"),
        told(card(5), ofImages("RP-IMG-011", 4)));
    assertEquals(List.of(), told(card(4), ofImages("RP-IMG-011", 3)));
    assertEquals(List.of(), told(card(2), ofImages("RP-IMG-011", 2)));
  }

  @Test
  void twoFaultsOfOneImageAreOneImage() {
    assertEquals(
        List.of(),
        told(card(3), at("RP-IMG-011", 3, 1), at("RP-IMG-011", 3, 1), at("RP-IMG-011", 4, 2)));
  }

  @Test
  void recordsWithoutAnImageAreNotCounted() {
    SampleCard card = SampleCard.rolledTagged();
    for (int record = 6; record <= 16; record++) {
      card = card.with(record, draft -> draft.without(999));
    }
    assertEquals(
        List.of(
            "RP-IMG-011: 3 of 3 images, for example: observed; required"
                + " -> RP-IMG-011 record 3 finger 1, RP-IMG-011 record 4 finger 2,"
                + " RP-IMG-011 record 5 finger 3"),
        told(MeasuredCard.of(card), ofImages("RP-IMG-011", 3)));
  }

  @Test
  void whatAHandDidAndWhatTheFileSaysIsNoSetting() {
    assertEquals(List.of(), told(card(3), ofImages("RP-RDG-002", 3)));
    assertEquals(
        List.of(),
        told(
            card(3),
            Established.finding("RP-IMG-011"),
            at("RP-IMG-011", 3, 1),
            at("RP-IMG-011", 4, 2)));
  }

  @Test
  void theWorstIsTheExampleAndItsRequirementIsThatOfOneImageWhereTheyDiffer() {
    assertEquals(
        List.of(
            "RP-IMG-011: 3 of 3 images, for example: worse; required"
                + " -> RP-IMG-011 record 3 finger 1, RP-IMG-011 record 4 finger 2,"
                + " RP-IMG-011 record 5 finger 3"),
        told(
            card(3),
            said("RP-IMG-011", 3, "first", "required").withSeverity(Severity.LIKELY),
            said("RP-IMG-011", 4, "worse", "required").withSeverity(Severity.BLOCKING),
            said("RP-IMG-011", 5, "last", "required").withSeverity(Severity.ADVICE)));
    assertEquals(
        List.of(
            "RP-IMG-011: 3 of 3 images, for example: worse; 20 bytes in that image"
                + " -> RP-IMG-011 record 3 finger 1, RP-IMG-011 record 4 finger 2,"
                + " RP-IMG-011 record 5 finger 3"),
        told(
            card(3),
            said("RP-IMG-011", 3, "first", "10 bytes").withSeverity(Severity.LIKELY),
            said("RP-IMG-011", 4, "worse", "20 bytes").withSeverity(Severity.BLOCKING),
            said("RP-IMG-011", 5, "last", "20 bytes").withSeverity(Severity.ADVICE)));
  }

  @Test
  void strongCompressionOfOneImageExplainsItsLostDetail() {
    assertEquals(
        List.of(
            "RP-IMG-016 record 3 finger 1: observed; required"
                + " -> RP-RDG-011 record 3 finger 1, RP-RDG-012 record 3 finger 1,"
                + " RP-RDG-014 record 3 finger 1, RP-RDG-015 record 3 finger 1,"
                + " RP-RDG-017 record 3 finger 1"),
        told(
            card(5),
            MeasuredCard.all(
                inRecord(3, 1, "RP-IMG-016"),
                inRecord(3, 1, OF_DETAIL),
                inRecord(3, 1, "RP-RDG-002"),
                inRecord(4, 2, OF_DETAIL))));
  }

  @Test
  void strongCompressionOfAllExplainsTheLostDetailOfItsImages() {
    Finding[] found =
        MeasuredCard.all(
            ofImages("RP-IMG-016", 4), inRecord(3, 1, "RP-RDG-011"), inRecord(7, 5, OF_DETAIL));
    assertEquals(
        List.of(
            "RP-IMG-016: 4 of 5 images, for example: observed; required"
                + " -> RP-IMG-016 record 3 finger 1, RP-IMG-016 record 4 finger 2,"
                + " RP-IMG-016 record 5 finger 3, RP-IMG-016 record 6 finger 4,"
                + " RP-RDG-011 record 3 finger 1"),
        told(card(5), found));
    Finding[] others = MeasuredCard.all(ofImages("RP-IMG-011", 3), inRecord(3, 1, OF_DETAIL));
    assertEquals(
        List.of(
            "RP-IMG-011: 3 of 3 images, for example: observed; required"
                + " -> RP-IMG-011 record 3 finger 1, RP-IMG-011 record 4 finger 2,"
                + " RP-IMG-011 record 5 finger 3"),
        told(card(3), others));
  }

  @Test
  void whatACauseExplainsAlreadyIsNotSharedOnceMore() {
    List<Finding> found = List.of(ofImages("RP-IMG-009", 3));
    CauseLog log = new CauseLog(SampleCard.TABLES);
    log.add(Established.finding("RP-IMG-040"), Consequences.exactly(found.subList(0, 1)));
    new SharedByImagesCause().establish(card(3).examinee(), found, log);
    List<String> rules = new ArrayList<>();
    log.causes().forEach(cause -> rules.add(cause.finding().ruleId()));
    assertEquals(List.of("RP-IMG-040"), rules);
  }
}
