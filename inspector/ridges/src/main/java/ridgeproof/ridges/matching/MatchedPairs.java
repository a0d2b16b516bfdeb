package ridgeproof.ridges.matching;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.cbor.CBORFactory;
import com.machinezoo.sourceafis.FingerprintTransparency;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Listens to the matcher of this thread until it is closed: which minutiae it pairs. */
final class MatchedPairs extends FingerprintTransparency {

  private static final String PAIRING = "best-pairing";

  /** Fewer fit anywhere. */
  private static final int MIN_PAIRS = 5;

  private byte[] pairing = {};

  @Override
  public boolean accepts(String key) {
    return key.equals(PAIRING);
  }

  @Override
  public void take(String key, String mime, byte[] data) {
    pairing = data.clone();
  }

  /** The fit of what was paired; each list in the order of its template. */
  Optional<PrintAlignment> alignment(List<Minutia> probe, List<Minutia> candidate) {
    if (pairing.length == 0) {
      return Optional.empty();
    }
    List<Minutia> first = new ArrayList<>();
    List<Minutia> second = new ArrayList<>();
    try {
      JsonNode graph = new ObjectMapper(new CBORFactory()).readTree(pairing);
      first.add(probe.get(graph.at("/root/probe").asInt()));
      second.add(candidate.get(graph.at("/root/candidate").asInt()));
      for (JsonNode edge : graph.path("tree")) {
        first.add(probe.get(edge.path("probeTo").asInt()));
        second.add(candidate.get(edge.path("candidateTo").asInt()));
      }
    } catch (IOException e) {
      throw new UncheckedIOException("the matcher's own pairing cannot be read", e);
    }
    return first.size() < MIN_PAIRS
        ? Optional.empty()
        : Optional.of(PrintAlignment.fit(first, second));
  }
}
