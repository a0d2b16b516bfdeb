package ridgeproof.corpus.fault;

import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Every verb by its name. */
final class Verbs {

  static final Map<String, Verb> ALL =
      Stream.of(FieldVerbs.ALL, SetVerbs.ALL, ImageVerbs.ALL, SegmentVerbs.ALL, ByteVerbs.ALL)
          .flatMap(verbs -> verbs.entrySet().stream())
          .collect(Collectors.toUnmodifiableMap(Map.Entry::getKey, Map.Entry::getValue));

  private Verbs() {}
}
