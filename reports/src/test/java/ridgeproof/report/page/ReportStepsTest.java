package ridgeproof.report.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static ridgeproof.report.page.MadeCardReport.field;
import static ridgeproof.report.page.MadeCardReport.finding;
import static ridgeproof.report.page.MadeCardReport.page;
import static ridgeproof.report.page.MadeCardReport.pageWithImages;
import static ridgeproof.report.page.MadeCardReport.print;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.RecommendedAction;
import ridgeproof.finding.Finding;
import ridgeproof.finding.Location;
import ridgeproof.report.PilotCard;
import ridgeproof.report.page.ReportModel.Link;
import ridgeproof.report.page.ReportModel.Step;
import ridgeproof.report.page.ReportModel.StepPicture;
import ridgeproof.spec.rule.Severity;

/** What the page says of each thing to do: with which rules, and where. */
class ReportStepsTest {

  /** The step of one action that answers all findings. */
  private static Step step(Finding... findings) {
    RecommendedAction action =
        new RecommendedAction("Do this.", Severity.LIKELY, List.of(findings));
    return page(MadeCardReport.withActions(MadeCardReport.of(PilotCard.ascii(), findings), action))
        .steps()
        .get(0);
  }

  @Test
  void aStepSaysWhatToDoWithWhichRulesAndWhere() {
    Step step =
        step(
            finding("RP-RDG-004", print(3, 1)),
            finding("RP-FLD-001", field(2, 2, 19)),
            finding("RP-FLD-001", field(3, 14, 5)),
            finding("RP-STR-001", Location.inRecord(4, 14)),
            finding("RP-TXN-021", Location.file()));
    assertEquals("LIKELY", step.severity());
    assertEquals("Do this.", step.remedy());
    assertEquals("RP-RDG-004, RP-FLD-001, RP-STR-001, RP-TXN-021, 5 places", step.rules());
    assertEquals(
        List.of(
            new Link("f1", "right thumb"),
            new Link("f2", "field 2.019 in record 2"),
            new Link("f3", "field 14.005 in record 3"),
            new Link("f4", "record 4"),
            new Link("f5", "the file as a whole")),
        step.places());
    assertEquals(0, step.furtherPlaces());
  }

  @Test
  void fieldsOfOneRecordAreNamedWithoutIt() {
    assertEquals(
        List.of(new Link("f1", "field 2.019"), new Link("f2", "field 2.020")),
        step(finding("RP-FLD-001", field(2, 2, 19)), finding("RP-FLD-001", field(2, 2, 20)))
            .places());
  }

  @Test
  void aFieldThatIsInNoRecordIsNamedWithoutOne() {
    Location nowhere = Location.file().in(field(2, 2, 19).field().orElseThrow());
    assertEquals(
        List.of(new Link("f1", "field 2.019"), new Link("f2", "record 4")),
        step(finding("RP-FLD-001", nowhere), finding("RP-STR-001", Location.inRecord(4, 14)))
            .places());
  }

  @Test
  void aFieldOfAPrintIsNamedByItsFinger() {
    Location capture = field(3, 14, 5).withPosition(print(3, 1).position());
    Location other = field(4, 14, 5).withPosition(print(4, 2).position());
    assertEquals(
        List.of(new Link("f1", "right thumb"), new Link("f2", "right index finger")),
        step(finding("RP-FLD-008", capture), finding("RP-FLD-008", other)).places());
  }

  @Test
  void placesThatWouldReadAlikeAreNumbered() {
    Location place = field(2, 2, 20);
    assertEquals(
        List.of(
            new Link("f1", "field 2.020"),
            new Link("f2", "field 2.020 (2)"),
            new Link("f3", "field 2.020 (3)")),
        step(
                finding("RP-FLD-008", place),
                finding("RP-FLD-005", place),
                finding("RP-FLD-004", place))
            .places());
  }

  @Test
  void ofMoreThanFourteenPlacesTheRestIsCounted() {
    Finding[] sixteen =
        IntStream.rangeClosed(1, 16)
            .mapToObj(field -> finding("RP-FLD-001", field(2, 2, field)))
            .toArray(Finding[]::new);
    Step step = step(sixteen);
    assertEquals(14, step.places().size());
    assertEquals(2, step.furtherPlaces());
  }

  @Test
  void aPrintIsBesideItsStepAndItsPixelsOnlyWhereTheyAreShown() {
    FindingsReport report =
        MadeCardReport.of(PilotCard.ascii(), finding("RP-RDG-004", print(5, 3)));
    StepPicture outline = page(report).steps().get(0).pictures().get(0);
    assertEquals("i5", outline.anchor());
    assertEquals(Optional.empty(), outline.source());
    assertEquals(
        Optional.of("data:image/png;base64,"),
        pageWithImages(report)
            .steps()
            .get(0)
            .pictures()
            .get(0)
            .source()
            .map(text -> text.substring(0, 22)));
  }
}
