package ridgeproof.report.data;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.StringWriter;
import java.util.List;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.FindingsReport;
import ridgeproof.report.FileFacts;
import ridgeproof.report.NotExamined;
import ridgeproof.report.RenderOptions;

/** Every cell of the sheet of findings. */
class FindingsCsvTest {

  private static final String HEAD =
      "file,sha256,verdict,rule,severity,title,record,record_type,idc,position,finger,field,subfield,"
          + "item,offset,length,found,required,remedy,source,places";
  private static final String FILE = "pilot card.an2," + "c".repeat(64) + ",";

  private static List<String> sheet(FindingsReport report, RenderOptions options)
      throws IOException {
    StringWriter text = new StringWriter();
    new FindingsCsv(text, options).add(MadeFindings.FILE, report);
    return List.of(text.toString().split("\n", -1));
  }

  private static String row(List<String> sheet, String rule) {
    return sheet.stream().filter(line -> line.contains(rule)).findFirst().orElseThrow();
  }

  @Test
  void eachFindingIsARowOfTheSameColumns() throws IOException {
    assertEquals(
        List.of(
            HEAD,
            FILE
                + "HOLD,RP-TXN-004,BLOCKING,Print is missing,,,,,,,,,,,no image of the right thumb,"
                + "one image of the right thumb,Capture the right thumb.,DESIGN,1",
            FILE
                + "HOLD,RP-FLD-005,LIKELY,Invalid character,2,2,0,,,2.018,1,3,201,12,[masked],"
                + "\"letters, \"\"-\"\"\",Re-enter the field.,\"EBTS, NAM 2.018\",2",
            FILE
                + "HOLD,RP-RDG-017,LIKELY,Poor print,3,14,2,2,right index finger,,,,400,900,"
                + "score 36 of 100,a score of at least 40,Recapture the right index finger.,"
                + "\"DESIGN, score\",1",
            FILE
                + "HOLD,RP-COD-001,ADVICE,Code is not listed,5,14,,13,right four fingers,14.004,,,"
                + "2000,5,\"'=1+1\\x1B[31m\",a listed code\\u202E,Select a listed code.,"
                + "\"OUTSIDE, table 3\",1",
            ""),
        sheet(MadeFindings.all(), RenderOptions.standard()));
  }

  @Test
  void onRequestEachPlaceAndEachConsequenceHasARow() throws IOException {
    List<String> sheet = sheet(MadeFindings.all(), RenderOptions.standard().withEveryFinding(true));
    assertEquals(8, sheet.size());
    assertEquals(
        FILE
            + "HOLD,RP-STR-015,NOTE,Count differs,1,1,,,,1.003,,,,,4 records,5 records,"
            + "No action is needed.,\"ITL2011, Field 1.003\",1",
        row(sheet, "RP-STR-015"));
  }

  @Test
  void valuesOfAPersonAreToldWhereAskedFor() throws IOException {
    assertEquals(
        FILE
            + "READY,RP-FLD-005,LIKELY,Invalid character,2,2,0,,,2.018,1,3,201,12,"
            + "\"SPECIMEN,ADA; SPECIMEN,EVE\",\"letters, \"\"-\"\"\",Re-enter the field.,"
            + "\"EBTS, NAM 2.018\",2",
        row(
            sheet(MadeFindings.with(MadeFindings.personal()), new RenderOptions(true, false, 80)),
            "RP-FLD-005"));
  }

  @Test
  void filesWithoutFindingsAndFilesWithoutReportHaveARowUnderOneHead() throws IOException {
    StringWriter text = new StringWriter();
    FindingsCsv csv = new FindingsCsv(text, RenderOptions.standard());
    csv.add(new FileFacts("sound.an2", 3, "d".repeat(64)), MadeFindings.with());
    csv.add(new FileFacts("other.an2", 3, "e".repeat(64)), MadeFindings.with());
    csv.add(List.of(new NotExamined("locked.an2", "permission denied")));
    String padding = ",".repeat(15);
    assertEquals(
        HEAD
            + "\nsound.an2,"
            + "d".repeat(64)
            + ",READY,,,no findings"
            + padding
            + "\nother.an2,"
            + "e".repeat(64)
            + ",READY,,,no findings"
            + padding
            + "\nlocked.an2,,NOT EXAMINED,,,permission denied"
            + padding
            + "\n",
        text.toString());
  }
}
