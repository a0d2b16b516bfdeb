package ridgeproof.calibration;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import ridgeproof.calibration.print.SeedRange;
import ridgeproof.calibration.real.CardTrial;
import ridgeproof.calibration.real.CardsSection;
import ridgeproof.calibration.real.DrawnPools;
import ridgeproof.calibration.real.LeadingSection;
import ridgeproof.calibration.real.LikelihoodFit;
import ridgeproof.calibration.real.PrintFolder;
import ridgeproof.calibration.real.PrintPool;
import ridgeproof.examination.rules.ridges.MatchLimits;
import ridgeproof.ridges.matching.SequenceLimits;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.limit.MatchLikelihood;

/** Judges cards put together of single prints of real people, and fits what similarities weigh. */
@Command(
    name = "cards",
    mixinStandardHelpOptions = true,
    description =
        "Puts cards together from two sets of real prints, in order and out of it, and writes what"
            + " is said of them. Each set is judged by what was fitted on the other.")
final class CardsCommand implements Callable<Integer> {

  private static final int SETS = 2;

  @Option(
      names = "--prints",
      paramLabel = "DIR",
      required = true,
      description = "holds a folder for each of two sets, with prints NNN_K.png at 500 ppi")
  Path prints;

  @Option(
      names = "--cards",
      paramLabel = "N",
      defaultValue = "1000",
      description = "cards of each kind (default: 1000)")
  int cards;

  @Option(
      names = "--synthetic",
      paramLabel = "N",
      defaultValue = "0",
      description = "people whose drawn cards are judged beside them (default: none)")
  int synthetic;

  @Option(
      names = "--seed",
      paramLabel = "S",
      required = true,
      description = "of the draw: 1000000 to 1999999")
  long seed;

  @Option(
      names = "--report",
      paramLabel = "FILE",
      description = "where the table goes; it replaces the one that the file begins with")
  Path report;

  @Option(
      names = "--likelihoods",
      paramLabel = "FILE",
      description = "where match-likelihoods.csv goes, fitted on both sets")
  Path likelihoods;

  @Override
  public Integer call() throws IOException {
    SeedRange.EVALUATION.checked(seed);
    List<Path> folders = folders();
    List<PrintPool> pools = new ArrayList<>();
    for (Path folder : folders) {
      pools.add(PrintFolder.read(folder));
    }
    if (likelihoods != null) {
      String names = folders.get(0).getFileName() + " and " + folders.get(1).getFileName();
      Files.writeString(likelihoods, LikelihoodFit.csv(LikelihoodFit.on(pools), names));
    }
    if (report != null) {
      CardsSection section = new CardsSection(columns(folders, pools), cards);
      LeadingSection.write(report, CardsSection.TITLE, section.write(command()));
    }
    return 0;
  }

  private List<Path> folders() throws IOException {
    try (var list = Files.list(prints)) {
      List<Path> folders = list.filter(Files::isDirectory).sorted().toList();
      if (folders.size() != SETS) {
        throw new IllegalArgumentException(prints + " does not hold two folders of prints");
      }
      return folders;
    }
  }

  private List<CardsSection.Column> columns(List<Path> folders, List<PrintPool> pools) {
    SpecTables tables = SpecTables.open();
    SequenceLimits inUse = MatchLimits.usual(tables);
    List<CardsSection.Column> columns = new ArrayList<>();
    for (int i = 0; i < SETS; i++) {
      PrintPool pool = pools.get(i);
      List<MatchLikelihood> fitted = LikelihoodFit.on(List.of(pools.get(1 - i)));
      columns.add(
          new CardsSection.Column(
              folders.get(i).getFileName().toString(),
              new CardTrial(List.of(pool), seed),
              MatchLimits.of(tables, fitted),
              inUse,
              pool.fingers().length + " real prints, optical, 500 ppi"));
    }
    if (synthetic > 0) {
      columns.add(
          new CardsSection.Column(
              "synthetic",
              new CardTrial(new DrawnPools(seed).of(synthetic), seed),
              inUse,
              inUse,
              synthetic + " drawn cards with rolls and slaps, each used several times"));
    }
    return columns;
  }

  private String command() {
    return String.format(
        Locale.ROOT,
        "./inspector/calibration/calibrate cards --prints ../shared/prints --seed %d --cards %d%s --report docs/evaluation/detection.md",
        seed,
        cards,
        synthetic == 0 ? "" : " --synthetic " + synthetic);
  }
}
