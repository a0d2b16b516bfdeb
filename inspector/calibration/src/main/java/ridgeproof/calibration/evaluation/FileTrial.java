package ridgeproof.calibration.evaluation;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import ridgeproof.calibration.print.DrawOptions;
import ridgeproof.corpus.batch.SubjectPlan;
import ridgeproof.corpus.composition.ComposedTransaction;
import ridgeproof.corpus.composition.SubjectCache;
import ridgeproof.corpus.composition.TransactionComposer;
import ridgeproof.corpus.impression.CaptureDefect;
import ridgeproof.examination.Examiner;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.RidgeAnalysis.Impression;
import ridgeproof.finding.Finding;
import ridgeproof.ridges.matching.FingerMatchResult;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.FingerPosition;
import ridgeproof.transaction.reader.ParseLimits;
import ridgeproof.transaction.record.ByteSource;

/** Cards and sets of flats of the corpus, written as files and examined as a user's are. */
public final class FileTrial {

  /** What is said of the picture; the rest of a drawn file is in order. */
  private static final Set<String> AREAS = Set.of("RP-RDG", "RP-IMG");

  private static final int AREA = 6;

  /**
   * One file.
   *
   * @param answers whether plain prints are of the fingers they are called by; none without rolls
   */
  record Card(List<ClassifiedImage> images, List<FingerMatchResult> answers) {

    Card {
      images = List.copyOf(images);
      answers = List.copyOf(answers);
    }
  }

  private final Examiner examiner = new Examiner(SpecTables.open(), ParseLimits.standard());
  private final SubjectPlan plan;

  public FileTrial(DrawOptions draw) {
    plan = draw.plan();
  }

  /** So many files, on all cores. */
  public List<Card> examine(int cards) {
    return IntStream.rangeClosed(1, cards).parallel().mapToObj(this::examineCard).toList();
  }

  private Card examineCard(int card) {
    ComposedTransaction composed =
        new TransactionComposer(new SubjectCache()).compose(plan.scenario(card));
    FindingsReport report =
        examiner.examine(ByteSource.of(composed.bytes()), ExaminationOptions.standard());
    List<ExaminedImage> images =
        report.images().stream().filter(image -> image.layout().frictionRidge()).toList();
    if (images.size() != composed.labels().size()) {
      throw new IllegalStateException("card " + card + " has an image that was not drawn");
    }
    Map<Integer, List<Finding>> findings = report.findingsByRecord();
    List<ClassifiedImage> judged = new ArrayList<>();
    for (int i = 0; i < images.size(); i++) {
      List<Finding> said = findings.getOrDefault(images.get(i).record().ordinal(), List.of());
      judged.add(judged(composed.labels().get(i), said));
    }
    return new Card(
        judged, report.sequence().map(facts -> facts.answers().answers()).orElse(List.of()));
  }

  private static ClassifiedImage judged(ComposedTransaction.Label label, List<Finding> said) {
    Set<String> rules = new TreeSet<>();
    Set<OptionalInt> fingers = new HashSet<>();
    for (Finding finding : said) {
      if (AREAS.contains(finding.ruleId().substring(0, AREA))) {
        rules.add(finding.ruleId());
        fingers.add(finding.location().position());
      }
    }
    Optional<Map.Entry<CaptureDefect, Double>> defect =
        label.defects().entrySet().stream().findFirst();
    return new ClassifiedImage(
        FingerPosition.isRolledBox(label.position()) ? Impression.ROLLED : Impression.PLAIN,
        defect.map(Map.Entry::getKey),
        defect.map(Map.Entry::getValue).orElse(0.0),
        FingerPosition.shownBy(label.position()).size(),
        fingers.size(),
        rules);
  }
}
