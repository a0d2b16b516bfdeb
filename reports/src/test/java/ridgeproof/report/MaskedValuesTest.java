package ridgeproof.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.facts.Depth;
import ridgeproof.report.masked.LikelyMistake;
import ridgeproof.report.page.HtmlReport;
import ridgeproof.report.text.TextReport;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.layout.FieldRow;

class MaskedValuesTest {

  private static final int VERSION = 500;

  private static FieldRow row(int field) {
    FieldNumber number = new FieldNumber(2, field);
    return Reports.TABLES.layout(2).item(number, 1, VERSION).orElseThrow();
  }

  @ParameterizedTest
  @CsvSource({
    "19793011, The day and month look swapped.",
    "20051506, The day and month look swapped.",
    "19003112, The day and month look swapped.",
    "20993112, The day and month look swapped.",
    "30111979, The year looks to be at the end; it belongs first.",
    "11301979, The year looks to be at the end; it belongs first.",
    "15062005, The year looks to be at the end; it belongs first.",
    "06152005, The year looks to be at the end; it belongs first.",
    "31121900, The year looks to be at the end; it belongs first.",
    "12312099, The year looks to be at the end; it belongs first.",
    "791130, The year may have only two digits.",
    "1979, It does not have eight digits.",
    "1979-11-30, 'It contains characters between year, month, and day.'",
    "'1979 11 30', 'It contains characters between year, month, and day.'",
    "'19791130 ', It begins or ends with a space.",
    "' 19791130', It begins or ends with a space.",
    "19791130Z, It contains characters other than digits.",
    "19791131, The month does not have that day.",
    "20230229, The month does not have that day.",
    "19790132, The day is not between 01 and 31.",
    "19791232, The day is not between 01 and 31.",
    "20260300, The day is not between 01 and 31.",
    "18993112, The month is not between 01 and 12.",
    "21003112, The month is not between 01 and 12.",
    "19790011, The month is not between 01 and 12.",
    "19791311, The day and month look swapped.",
    "19791399, The month is not between 01 and 12."
  })
  void whatIsWrongWithADateIsToldWithoutIt(String date, String words) {
    assertEquals(Optional.of(words), LikelyMistake.of(date, row(22)));
  }

  /**
   * Of a place of birth, two capital letters; a number of nine digits; a number of any characters.
   */
  @ParameterizedTest
  @CsvSource({
    "20, me, It contains lowercase letters.",
    "20, M5X, It contains digits.",
    "20, XYZ, It is 1 character too long.",
    "20, wxyz, It is 2 characters too long.",
    "20, M, It is 1 character too short.",
    "20, m, It is 1 character too short.",
    "16, '000000000 ', It begins or ends with a space.",
    "16, 000 00 0000, It contains spaces.",
    "16, 00000000O, It contains the letter O where a zero belongs.",
    "16, 000-00-0000, It contains punctuation.",
    "16, A000000000, It contains letters.",
    "16, 000, It is 6 characters too short.",
    "16, 00 00, It is 4 characters too short.",
    "9, CASE 0000000000000000\u00c9, It is 2 characters too long.",
    "9, CASE 7\u00c9, It contains an accented or special character."
  })
  void whatIsWrongWithAnotherValueIsToldWithoutIt(int field, String value, String words) {
    assertEquals(Optional.of(words), LikelyMistake.of(value, row(field)));
  }

  @Test
  void nothingIsSaidOfAValueThatNoSimpleCorrectionMends() {
    assertEquals(Optional.empty(), LikelyMistake.of("##", row(20)));
  }

  @Test
  void aStepAboutAMaskedValueSaysWhatIsLikelyWrongAndHowToSeeIt() {
    byte[] bytes = PilotCard.ascii().particular(22, "19793011").bytes();
    FindingsReport report = Reports.examine(bytes, Depth.STRUCTURE);
    FileFacts file = Reports.facts(bytes);
    String text = Reports.text(bytes, report).replaceAll("\\s+", " ");
    String page = HtmlReport.render(file, report, RenderOptions.standard());
    for (String form : List.of(text, page)) {
      assertTrue(form.contains("The day and month look swapped."), form);
      assertTrue(form.contains("The value is masked in this report. To see it, repeat"), form);
      assertFalse(form.contains("19793011"), form);
    }
    String shown = TextReport.render(file, report, new RenderOptions(true, false, 80));
    assertTrue(shown.contains("19793011"), shown);
    assertFalse(shown.contains("--show-personal"), shown);
  }

  /** The step names the finger, so that there is nothing else to see. */
  @Test
  void aFingerThatIsAnnotatedAsMissingButImagedHidesNoValue() {
    byte[] bytes = PilotCard.ascii().particular(84, "02\u001FXX").bytes();
    String text =
        Reports.text(bytes, Reports.examine(bytes, Depth.STRUCTURE)).replaceAll("\\s+", " ");
    int step = text.indexOf("Look at the image of the right index finger.");
    assertTrue(step >= 0, text);
    assertFalse(text.substring(step, text.indexOf("RP-TXN-005", step)).contains("masked"), text);
    assertTrue(text.contains("found annotated as missing, but imaged"), text);
  }
}
