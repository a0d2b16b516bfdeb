package ridgeproof.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import ridgeproof.imagery.platen.CellBox;

class PlatenNoteTest {

  @Test
  void theCoveredCellsAreThoseThatAPrintCovers() {
    List<CellBox> prints =
        List.of(
            new CellBox(2, 1, 5, 4),
            new CellBox(4, 3, 8, 6),
            new CellBox(-2, 5, 1, 9),
            new CellBox(9, 0, 14, 2),
            new CellBox(3, 3, 3, 6));
    PlatenNote note = new PlatenNote(10, 7, prints, List.of(), List.of(), List.of());
    assertEquals(
        IntStream.range(0, 70).filter(note::covers).boxed().toList(),
        note.covered().stream().boxed().toList());
  }
}
