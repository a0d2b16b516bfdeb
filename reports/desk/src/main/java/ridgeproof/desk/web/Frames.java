package ridgeproof.desk.web;

import java.time.Duration;
import ridgeproof.desk.view.DeskFrame;
import ridgeproof.desk.view.Texts;

/** What all pages of one desk have in common. */
record Frames(Texts texts, String base, boolean gate, Duration keep) {

  DeskFrame of(String here, String title) {
    return new DeskFrame(
        texts, base, title, here, gate, texts.counted("keeping.text", keep.toMinutes()));
  }

  /** A page whose title is a text of the bundle. */
  DeskFrame titled(String here, String key) {
    return of(here, texts.of(key));
  }
}
