package ridgeproof.report.catalogue;

import java.util.List;
import java.util.Locale;
import ridgeproof.report.ReportPhrases;
import ridgeproof.report.TextLayout;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.rule.RuleRow;

/** The catalogue of rules as text. */
public final class RuleListing {

  private static final int WIDTH = 80;

  private final ReportPhrases wording;

  public RuleListing(SpecTables tables) {
    this.wording = new ReportPhrases(tables);
  }

  /** A line a rule. */
  public String list(List<RuleRow> rules) {
    StringBuilder out = new StringBuilder();
    for (RuleRow rule : rules) {
      out.append(
          String.format(Locale.ROOT, "%s  %-8s  %s%n", rule.id(), rule.severity(), rule.title()));
    }
    return out.append(rules.size() == 1 ? "1 rule" : rules.size() + " rules")
        .append(". To explain one: ridgeproof rules ID\n")
        .toString();
  }

  /** One rule with all that the catalogue says of it. */
  public String explain(RuleRow rule) {
    StringBuilder out = new StringBuilder();
    out.append(rule.id()).append("  ").append(rule.title()).append("\n\n");
    TextLayout.indented(out, "  severity  ", rule.severity() + ", " + meaning(rule), WIDTH);
    TextLayout.indented(out, "  why       ", spoken(rule.explanation()), WIDTH);
    TextLayout.indented(out, "  remedy    ", spoken(rule.remedy()), WIDTH);
    String source = wording.title(rule.source().document());
    String place = rule.source().place().isEmpty() ? "" : ", " + rule.source().place();
    TextLayout.indented(
        out, "  source    ", source + place + " (" + rule.source().known().label() + ")", WIDTH);
    return out.toString();
  }

  private static String meaning(RuleRow rule) {
    return switch (rule.severity()) {
      case BLOCKING -> "a bureau that follows the source rejects the file or cannot read it";
      case LIKELY -> "commonly rejected, or the print may not match";
      case ADVICE -> "allowed, but worth checking";
      case NOTE -> "for information";
    };
  }

  /** The catalogue's placeholders as words, since no finding fills them here. */
  public static String spoken(String text) {
    String words =
        text.replace("{name} ({field})", "the field")
            .replace("field {field}", "the field")
            .replace("{field}", "the field")
            .replace("{name}", "the value")
            .replace("{record}", "the record")
            .replace("{finger}", "the finger")
            .replace(" ({found})", "")
            .replace("{required}", "what is required");
    String sentences = words.replace(". the ", ". The ");
    return sentences.startsWith("the ") ? "The" + sentences.substring(3) : sentences;
  }
}
