package ridgeproof.examination.comparison;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.SampleCard;
import ridgeproof.examination.comparison.PersonDoubt.Kind;
import ridgeproof.examination.facts.Depth;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.layout.FingerPosition;

/** Prints and biographic data that do not go together. */
class PersonDoubtTest {

  private static final SampleCard CARD = SampleCard.rolledTagged();
  private static final FieldNumber NAME = new FieldNumber(2, 18);
  private static final FindingsReport REPORT = Compared.report(CARD, Depth.STRUCTURE);

  private static FindingsReport renamed() {
    return Compared.report(CARD.with(2, draft -> draft.with(18, "SPECIMEN,BEA")), Depth.STRUCTURE);
  }

  /** Pairs of which so many match, and so many match nothing. */
  private static List<RecordPair> pairs(int alike, int unlike, int untold) {
    List<RecordPair> pairs = new ArrayList<>();
    for (int i = 0; i < alike + unlike + untold; i++) {
      FingerPosition finger = FingerPosition.values()[i];
      PrintComparison print =
          i < alike
              ? PrintComparison.same(finger, 90, Optional.empty())
              : PrintComparison.untold(
                  finger,
                  i < alike + unlike
                      ? PrintComparison.Reason.NOT_ALIKE
                      : PrintComparison.Reason.TOO_FEW_MINUTIAE,
                  5);
      pairs.add(pair(i, true, new ImageDifference.NotOpened(), List.of(print)));
    }
    return pairs;
  }

  private static RecordPair pair(
      int index, boolean showsFingers, ImageDifference image, List<PrintComparison> prints) {
    var record = REPORT.images().get(index).record();
    return new RecordPair(
        record,
        record,
        false,
        false,
        List.of(),
        Optional.of(image),
        showsFingers,
        Optional.of(new FingerComparison(prints)));
  }

  @ParameterizedTest(name = "{0} alike, {1} unlike, renamed {3}")
  @CsvSource({
    "1, 0, 0, false, ",
    "1, 0, 0, true, SAME_PRINTS_OTHER_DATA",
    "1, 9, 0, true, SAME_PRINTS_OTHER_DATA",
    "0, 4, 6, true, ",
    "0, 5, 0, true, OTHER_PRINTS_OTHER_DATA",
    "0, 5, 0, false, OTHER_PRINTS_SAME_DATA",
    "0, 4, 0, false, ",
    "0, 0, 9, true, ",
  })
  void printsAndDataAreHeldAgainstEachOther(
      int alike, int unlike, int untold, boolean other, Kind kind) {
    Optional<PersonDoubt> doubt =
        PersonDoubt.of(REPORT, other ? renamed() : REPORT, pairs(alike, unlike, untold));
    assertEquals(Optional.ofNullable(kind), doubt.map(PersonDoubt::kind));
    doubt.ifPresent(
        found -> {
          assertEquals(alike > 0 ? alike : unlike, found.fingers());
          assertEquals(other ? List.of(NAME) : List.of(), found.changed());
        });
  }

  @Test
  void oneFingerThatIsUnlikeInTwoImagesCountsOnce() {
    List<RecordPair> pairs = new ArrayList<>(pairs(0, 4, 0));
    pairs.addAll(pairs(0, 4, 0));
    assertEquals(Optional.empty(), PersonDoubt.of(REPORT, renamed(), pairs));
  }

  @Test
  void theSameCaptureOfAFingerIsTheSamePrint() {
    ImageDifference same = new ImageDifference.SameBytes();
    assertEquals(
        1,
        PersonDoubt.of(REPORT, renamed(), List.of(pair(0, true, same, List.of())))
            .orElseThrow()
            .fingers());
    assertEquals(
        Optional.empty(),
        PersonDoubt.of(REPORT, renamed(), List.of(pair(0, false, same, List.of()))));
  }

  @Test
  void dataThatOnlyOneFileTellsIsNoContradiction() {
    FindingsReport without =
        Compared.report(CARD.with(2, draft -> draft.without(18)), Depth.STRUCTURE);
    FindingsReport empty =
        Compared.report(CARD.with(2, draft -> draft.with(18, " ")), Depth.STRUCTURE);
    for (FindingsReport other : List.of(without, empty)) {
      assertEquals(Optional.empty(), PersonDoubt.of(REPORT, other, pairs(1, 0, 0)));
      assertEquals(Optional.empty(), PersonDoubt.of(other, REPORT, pairs(1, 0, 0)));
    }
  }

  @Test
  void filesThatTellNothingOfThePersonAreNoDoubt() {
    FindingsReport nobody = Compared.report(CARD.without(2), Depth.STRUCTURE);
    assertEquals(Optional.empty(), PersonDoubt.of(nobody, nobody, pairs(0, 9, 0)));
  }

  @Test
  void theSameFileTwiceIsNoDoubtAndAnotherNameOnItIs() {
    assertEquals(Optional.empty(), Compared.reports(REPORT, REPORT).personDoubt());
    assertEquals(
        new PersonDoubt(Kind.SAME_PRINTS_OTHER_DATA, 14, List.of(NAME)),
        Compared.reports(REPORT, renamed()).personDoubt().orElseThrow());
  }
}
