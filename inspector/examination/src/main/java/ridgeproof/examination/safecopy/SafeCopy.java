package ridgeproof.examination.safecopy;

import java.util.List;
import ridgeproof.transaction.record.ByteSource;

/**
 * A transaction with the layout of another and nothing of its person.
 *
 * @param bytes as many as the original has
 * @param lost findings of the original that the copy does not show
 * @param gained findings that only the copy shows
 */
public record SafeCopy(ByteSource bytes, List<FindingChange> lost, List<FindingChange> gained) {

  public SafeCopy {
    lost = List.copyOf(lost);
    gained = List.copyOf(gained);
  }
}
