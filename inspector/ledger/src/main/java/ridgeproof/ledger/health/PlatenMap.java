package ridgeproof.ledger.health;

import java.util.List;
import ridgeproof.imagery.platen.CellBox;

/**
 * How often each cell of a platen was stained.
 *
 * @param width cells across
 * @param height cells down
 * @param stained share of the images in which the cell was stained, row by row, 0 to 1; negative
 *     where prints nearly always covered it
 * @param spot the cells in question
 */
public record PlatenMap(int width, int height, List<Double> stained, CellBox spot)
    implements Evidence {

  public PlatenMap {
    stained = List.copyOf(stained);
  }
}
