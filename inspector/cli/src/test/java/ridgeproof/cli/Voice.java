package ridgeproof.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What no sentence that a user meets may say, and how it is said instead. */
final class Voice {

  private static final int AROUND = 40;

  private static final String COUNTED =
      "(?:bytes|characters|codes|differences|digits|days|entries|errors|fields|files|findings"
          + "|fingers|images|items|lines|minutiae|pages|pixels|places|points|positions|prints"
          + "|records|repetitions|requirements|rules|seconds|segments|steps|stories|subfields"
          + "|times|values|years)";

  private static final Map<Pattern, String> BANNED = banned();

  private Voice() {}

  private static Map<Pattern, String> banned() {
    Map<String, String> words = new LinkedHashMap<>();
    words.put("otherwise than|has otherwise", "differs from");
    words.put("held (to|against)\\b", "checked as, checked against");
    words.put("\\btold\\b|tells? of a person|tell of a person", "reported, personal data");
    words.put("taken for\\b|takes? for another", "read as");
    words.put("\\bstands?\\b", "is");
    words.put("\\bmended\\b", "resolved");
    words.put("\\b(is|was|be|are) laid\\b|\\blaid down\\b|\\bLay \\{", "placed");
    words.put("\\bof ours?( own)?\\b", "internal");
    words.put("\\ba hair\\b", "slightly");
    words.put("turned (round|over)\\b", "swapped, reversed");
    words.put("whose finger", "finger position could not be verified");
    words.put("says nothing", "is empty");
    words.put("will object to|known to object to", "is likely to reject");
    words.put("in (their|its own|each other's) box(es)?\\b", "position");
    words.put("no identification and no", "neither identifies nor certifies");
    words.put("look again", "review");
    words.put("follows the sources", "follows the published standards");
    words.put("honest retakes?", "repeated attempts");
    words.put("cent(re|er) of its first joint", "the whole fingertip, down to the first crease");
    words.put("cannot be told", "could not be verified, inconclusive");
    words.put("(is|are) there twice", "duplicate");
    words.put("of the required form", "format");
    words.put("has to be\\b|have to be\\b", "must be, enter");
    words.put("have the vendor|give the ticket", "ask the station's vendor to, send a ticket");
    words.put("\\bparticulars?\\b", "biographic data, biographic field");
    words.put("(are|is) exchanged\\b", "swapped");
    words.put("not held against", "not checked");
    words.put("that is not issued", "is not in use");
    words.put("only fills the field", "placeholder");
    words.put("sign that does not belong", "invalid character");
    words.put("do(es)? not count\\b", "ignored");
    words.put("confidence in the tilt", "tilt and its limit alone");
    words.put("unless set\\b", "(default: ...)");
    words.put("makes a set of", "generates");
    words.put("a defect of (ours|ridgeproof)", "internal error");
    words.put("nothing needs to be done", "no action is needed");
    words.put("nobody looked", "were not checked");
    words.put("asks for anything", "calls for action");
    words.put("\\(s\\)", "a number that agrees with its noun");
    words.put(
        "(?<![-\\d.,:/])(?<!\\b(?:byte|code|depth|field|finger|item|level|page|position|record|step"
            + "|subfield|table|type|version) )\\b1 (more )?"
            + COUNTED
            + "\\b",
        "1 file, 2 files");
    words.put(
        "(?-i:(?<![-\\w.])(?!(?:present|missing|check|correct) )([a-z]{2,}) \\1(?![-\\w.]))",
        "one of the doubled words");
    words.put(
        "(?<![-\\w.])(colour|centre|metre|millimetre|neighbour|behaviour|grey|labelled)s?\\b(?!-)",
        "American spelling");
    Map<Pattern, String> patterns = new LinkedHashMap<>();
    words.forEach(
        (word, better) -> patterns.put(Pattern.compile(word, Pattern.CASE_INSENSITIVE), better));
    return patterns;
  }

  /** Each banned phrase of a text, with what is around it. */
  static List<String> faults(String where, String text) {
    String line = text.replaceAll("\\s+", " ");
    List<String> faults = new ArrayList<>();
    BANNED.forEach(
        (phrase, better) -> {
          Matcher found = phrase.matcher(line);
          if (found.find()) {
            int from = Math.max(0, found.start() - AROUND);
            int to = Math.min(line.length(), found.end() + AROUND);
            faults.add(
                where
                    + ": \""
                    + found.group()
                    + "\" (better: "
                    + better
                    + ") in \""
                    + line.substring(from, to)
                    + "\"");
          }
        });
    return faults;
  }
}
