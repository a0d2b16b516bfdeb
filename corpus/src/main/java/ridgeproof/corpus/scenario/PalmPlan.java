package ridgeproof.corpus.scenario;

import java.util.List;
import ridgeproof.corpus.impression.FrameSize;

/**
 * A Type-15 record with a placeholder for a palm: the texture of one finger's ridges, repeated.
 *
 * @param position 21 to 30
 * @param size width and height in pixels at 500 ppi
 */
public record PalmPlan(int position, List<Integer> size) {

  public PalmPlan {
    Defaults.within("position", position, 21, 30);
    size = Defaults.list(size);
    if (size.isEmpty()) {
      size = position == 22 || position == 24 ? List.of(700, 2000) : List.of(1800, 2200);
    }
    if (size.size() != 2) {
      throw new IllegalArgumentException("size is not a width and a height");
    }
  }

  public FrameSize frame() {
    return new FrameSize(size.get(0), size.get(1));
  }
}
