package ridgeproof.ridges.matching;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.cbor.CBORFactory;
import java.io.IOException;
import java.io.UncheckedIOException;

/** Mirrors the minutiae of a template from left to right, which spares to extract them again. */
final class MirroredTemplate {

  private static final double FULL_TURN = 2 * Math.PI;

  private MirroredTemplate() {}

  static byte[] of(byte[] template) {
    ObjectMapper mapper = new ObjectMapper(new CBORFactory());
    try {
      ObjectNode tree = (ObjectNode) mapper.readTree(template);
      int width = tree.get("width").asInt();
      ArrayNode places = (ArrayNode) tree.get("positionsX");
      for (int i = 0; i < places.size(); i++) {
        places.set(i, mapper.getNodeFactory().numberNode(width - 1 - places.get(i).asInt()));
      }
      ArrayNode directions = (ArrayNode) tree.get("directions");
      for (int i = 0; i < directions.size(); i++) {
        double mirrored = Math.PI - directions.get(i).asDouble();
        double turned = mirrored < 0 ? mirrored + FULL_TURN : mirrored;
        directions.set(i, mapper.getNodeFactory().numberNode((float) turned));
      }
      return mapper.writeValueAsBytes(tree);
    } catch (IOException e) {
      throw new UncheckedIOException("the extractor's own template cannot be read", e);
    }
  }
}
