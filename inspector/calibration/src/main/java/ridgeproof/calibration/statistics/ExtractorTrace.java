package ridgeproof.calibration.statistics;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.cbor.CBORFactory;
import com.machinezoo.sourceafis.FingerprintTransparency;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;

/**
 * Listens to the extractor while it works on this thread, for what it saw before it kept the
 * hundred most clustered minutiae. Stage and keys are those of the SourceAFIS transparency data.
 */
final class ExtractorTrace extends FingerprintTransparency {

  /** The last stage that has all of them. */
  private static final String ALL_MINUTIAE = "removed-minutia-clouds";

  private static final String KIND = "type";
  private static final String ENDING = "ENDING";

  /**
   * What one extraction saw.
   *
   * @param endings ridge endings
   * @param bifurcations ridge forks
   */
  record Seen(int endings, int bifurcations) {}

  private final List<Seen> seen = new ArrayList<>();

  @Override
  public boolean accepts(String key) {
    return key.equals(ALL_MINUTIAE);
  }

  @Override
  public void take(String key, String mime, byte[] data) {
    if (key.equals(ALL_MINUTIAE)) {
      seen.add(read(data));
    }
  }

  /** In the order of the extractions. */
  List<Seen> seen() {
    return List.copyOf(seen);
  }

  private static Seen read(byte[] cbor) {
    int endings = 0;
    int bifurcations = 0;
    try (JsonParser parser = new CBORFactory().createParser(cbor)) {
      while (parser.nextToken() != null) {
        if (parser.currentToken() == JsonToken.VALUE_STRING && KIND.equals(parser.currentName())) {
          boolean ending = ENDING.equals(parser.getText());
          endings += ending ? 1 : 0;
          bifurcations += ending ? 0 : 1;
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException("the extractor's own data cannot be read", e);
    }
    return new Seen(endings, bifurcations);
  }
}
