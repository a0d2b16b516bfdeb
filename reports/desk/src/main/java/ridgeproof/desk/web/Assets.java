package ridgeproof.desk.web;

import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The scripts, styles and drawings of the pages, ours and those of libraries, read once. */
final class Assets {

  private static final String SCRIPT = "text/javascript; charset=utf-8";
  private static final String STYLE = "text/css; charset=utf-8";
  private static final String LIBRARIES = "/META-INF/resources/webjars/";

  private record Asset(String type, byte[] bytes) {}

  private final Map<String, Asset> assets = new HashMap<>();

  Assets() {
    add("htmx.js", SCRIPT, LIBRARIES + "htmx.org/2.0.4/dist/htmx.min.js");
    add("uplot.js", SCRIPT, LIBRARIES + "uplot/1.6.30/dist/uPlot.iife.min.js");
    add("uplot.css", STYLE, LIBRARIES + "uplot/1.6.30/dist/uPlot.min.css");
    List.of("live.js", "desk.js", "file.js", "pages.js").forEach(name -> add(name, SCRIPT, name));
    add("desk.css", STYLE, "desk.css");
    add("icon.svg", "image/svg+xml", "icon.svg");
  }

  private void add(String name, String type, String resource) {
    try (InputStream in = Assets.class.getResourceAsStream(resource)) {
      if (in == null) {
        throw new IllegalStateException("no resource " + resource);
      }
      assets.put(name, new Asset(type, in.readAllBytes()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  void serve(Context request) {
    Asset asset = assets.get(request.pathParam("name"));
    if (asset == null) {
      throw Refused.notFound();
    }
    request.contentType(asset.type()).result(asset.bytes());
  }
}
