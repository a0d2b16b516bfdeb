package ridgeproof.ledger.health;

import java.util.Map;
import java.util.Optional;
import ridgeproof.ledger.PlatenNote;
import ridgeproof.ledger.PrintMeasure;

/**
 * A print as far as the health of its station needs it.
 *
 * @param position friction ridge position code
 */
record Shot(
    int position,
    boolean rolled,
    String encoder,
    Map<PrintMeasure, Double> measures,
    Optional<PlatenNote> platen) {}
