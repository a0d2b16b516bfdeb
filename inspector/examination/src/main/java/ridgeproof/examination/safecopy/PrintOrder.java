package ridgeproof.examination.safecopy;

import java.util.Map;
import java.util.Set;

/**
 * A print of nobody that is to show what an image of the original shows.
 *
 * @param position friction ridge position code of the image
 * @param rolled whether it is a rolled print
 * @param width pixels
 * @param height pixels
 * @param ppi pixels per inch at which ridges of the usual distance look as far apart as those of
 *     the image; what the image states, unless its ridges were found to contradict that
 * @param sideways whether the image is turned by 90 degrees
 * @param lostFrom percent of the height below which lines are missing, 0 where none are
 * @param missing fingers, by code, that the transaction annotates as missing
 * @param shown the finger that is to be in the place of another, by code
 * @param strangers fingers, by code, that are to be those of another person
 * @param faults rules that each finger, by code, is to meet; under 0 those of the whole image
 * @param seed of everything left to chance
 * @param attempt how often the faults did not show before, from 0
 */
public record PrintOrder(
    int position,
    boolean rolled,
    int width,
    int height,
    int ppi,
    boolean sideways,
    int lostFrom,
    Set<Integer> missing,
    Map<Integer, Integer> shown,
    Set<Integer> strangers,
    Map<Integer, Set<String>> faults,
    long seed,
    int attempt) {

  public PrintOrder {
    missing = Set.copyOf(missing);
    shown = Map.copyOf(shown);
    strangers = Set.copyOf(strangers);
    faults = Map.copyOf(faults);
  }
}
