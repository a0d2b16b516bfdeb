package ridgeproof.examination.rules.transaction;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static ridgeproof.examination.SampleRecords.found;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ridgeproof.examination.SampleCard;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.spec.agency.AgencyProfileReader;
import ridgeproof.spec.agency.ProfileReading;

class TransactionTypeRuleTest {

  private static final String RULE = "RP-PTL-004";

  private static SampleCard ofType(String type) {
    return SampleCard.rolled().with(1, draft -> draft.with(4, type));
  }

  @ParameterizedTest
  @CsvSource({
    "FAUF, FAUG, true", // another letter
    "FAUF, GAUF, true",
    "FAUF, AUF, true", // one left out
    "FAUF, FAU, true",
    "FAUF, FAF, true",
    "FAUF, FAUXF, true", // one too many
    "FAUXF, FAUF, true",
    "FAUF, FAUFF, true",
    "FAUF, XFAUF, true",
    "FAUF, FUAF, true", // two neighbors swapped
    "FAUF, FAFU, true",
    "FAUF, FAUF, false",
    "FAUF, FA, false",
    "FAUF, FAUFXX, false",
    "FAUF, UFFA, false",
    "FAUF, FXXF, false",
    "FAUF, UAFF, false",
    "FAUF, FUAG, false"
  })
  void aNearMissIsOneLetterOffAndNoMore(String code, String other, boolean near) {
    assertEquals(near, TransactionTypeRule.isOneLetterOff(code, other));
  }

  @Test
  void whatLooksLikeNoCodeMayBeANameAndIsMasked() {
    assertEquals(
        List.of("RP-PTL-004 record 1 field 1.004: \"QQQ\"; a published type of transaction"),
        found(ofType("QQQ"), RULE));
    assertEquals(
        List.of(
            "RP-PTL-004 record 1 field 1.004: personal \"ADA SPECIMEN\";"
                + " a published type of transaction"),
        found(ofType("ADA SPECIMEN"), RULE));
    assertEquals(
        List.of(
            "RP-PTL-004 record 1 field 1.004: personal \"ADASPECIMENOFTHEP\";"
                + " a published type of transaction"),
        found(ofType("ADASPECIMENOFTHEP"), RULE));
  }

  @Test
  void typesOfAnotherDomainAreNotKnown() {
    SampleCard elsewhere =
        ofType("QQQ").with(1, draft -> draft.with(13, List.of(List.of("PILOTS", ""))));
    assertEquals(
        List.of(
            "RP-PTL-060 record 1 field 1.013: a domain other than NORAM;"
                + " a domain with known types of transaction"),
        found(elsewhere, RULE, "RP-PTL-060"));
  }

  @Test
  void aTypeThatTheAgencyListsIsRight() {
    assertEquals(List.of(), of("PILOT", "pattern (PILOT|HARBOR)"));
    assertEquals(List.of(), of("HARBOR", "pattern (PILOT|HARBOR)"));
    assertEquals(
        List.of("RP-PTL-004 record 1 field 1.004: \"BUOY\"; a published type of transaction"),
        of("BUOY", "pattern (PILOT|HARBOR)"));
  }

  @Test
  void anAgencyMayTakeItsTypesFromATable() {
    assertEquals(List.of(), of("XX", "table amputation"));
    assertEquals(
        List.of("RP-PTL-004 record 1 field 1.004: \"ZZZ9\"; a published type of transaction"),
        of("ZZZ9", "table amputation"));
  }

  @Test
  void whatTheAgencySaysOfAnotherFieldListsNoType() {
    assertEquals(
        List.of("RP-PTL-004 record 1 field 1.004: \"BUOY\"; a published type of transaction"),
        of("BUOY", "2.037", "pattern BUOY"));
  }

  private static List<String> of(String type, String values) {
    return of(type, "1.004", values);
  }

  /** What is found of a type by an agency that says which values a field takes. */
  private static List<String> of(String type, String field, String values) {
    String profile =
        """
        name = "tidewater"
        title = "Tidewater Harbour Pilots' licensing office"
        [[fields]]
        field = "%s"
        name = "Type of the office"
        condition = "mandatory"
        values = "%s"
        meaning = "a type of the office"
        """;
    ProfileReading reading =
        AgencyProfileReader.read(
            profile.replaceFirst("%s", field).replace("%s", values), SampleCard.TABLES);
    return found(
        SampleCard.examine(
            ofType(type).bytes(),
            ExaminationOptions.standard()
                .withToday(SampleCard.TODAY)
                .withDepth(Depth.STRUCTURE)
                .withAgency(((ProfileReading.Usable) reading).profile())),
        RULE);
  }
}
