package ridgeproof.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.json.JsonWriteFeature;

/** JSON in ASCII alone: a control or direction character from a file is written as an escape. */
public final class AsciiJson {

  private AsciiJson() {}

  public static JsonFactory factory() {
    return JsonFactory.builder().enable(JsonWriteFeature.ESCAPE_NON_ASCII).build();
  }
}
