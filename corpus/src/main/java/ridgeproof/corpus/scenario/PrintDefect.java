package ridgeproof.corpus.scenario;

import ridgeproof.corpus.impression.CaptureDefect;

/**
 * What went wrong when one image was captured.
 *
 * @param box position code of the image
 * @param strength 0 nothing to 1 the worst that is met in practice
 */
public record PrintDefect(int box, CaptureDefect kind, double strength) {

  public PrintDefect {
    Defaults.within("box", box, 1, 15);
    Defaults.required("kind", kind);
    if (!(strength >= 0 && strength <= 1)) {
      throw new IllegalArgumentException("strength is " + strength + ", not 0 to 1");
    }
  }
}
