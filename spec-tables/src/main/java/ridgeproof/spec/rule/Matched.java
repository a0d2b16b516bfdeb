package ridgeproof.spec.rule;

import java.util.Set;
import ridgeproof.spec.table.Source;

/**
 * What of a layout row agreed with a published document when a test compared them.
 *
 * @param document key of a row of {@code sources.csv}; empty where nothing was compared
 */
public record Matched(String document, Set<Aspect> aspects) {

  public static final Matched NOTHING = new Matched("", Set.of());

  public Matched {
    aspects = Set.copyOf(aspects);
  }

  /** Reads {@code EBTS10T: presence values}. */
  public static Matched parse(String cell) {
    int colon = cell.indexOf(':');
    if (colon < 0) {
      throw new IllegalArgumentException("not a document, a colon and what agreed");
    }
    return new Matched(cell.substring(0, colon).strip(), Aspect.parse(cell.substring(colon + 1)));
  }

  /** Values of a closed list settle characters and length too. */
  public boolean has(Aspect aspect) {
    return aspects.contains(aspect)
        || aspects.contains(Aspect.VALUES)
            && (aspect == Aspect.CHARACTERS || aspect == Aspect.LENGTH);
  }

  /** The place in the standard, with the document that confirms it. */
  public Source by(Source source) {
    String place =
        source.place().isEmpty()
            ? "matched with " + document
            : source.place() + ", matched with " + document;
    return new Source(source.document(), place, Source.Knowledge.PUBLISHED);
  }
}
