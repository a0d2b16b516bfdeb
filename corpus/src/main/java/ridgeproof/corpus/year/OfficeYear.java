package ridgeproof.corpus.year;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** The year as files, in order of the sittings; the same seed gives the same bytes. */
public final class OfficeYear {

  private static final int AHEAD_OF_EACH_CORE = 3;

  private final YearPlan plan;
  private final YearFiles files;

  /**
   * @param submissions how many there are
   * @param stories whether the three stories happen
   * @param compressed whether images are stored as WSQ; else as pixels, which is quicker
   */
  public OfficeYear(long seed, int submissions, boolean stories, boolean compressed) {
    this.plan = new YearPlan(seed, submissions, stories);
    this.files = new YearFiles(plan, compressed);
  }

  /** Takes a file. */
  public interface FileAction {
    void take(String name, byte[] bytes) throws IOException;
  }

  /** Makes every file, several at a time, and gives them in order. */
  public void forEach(FileAction action, int threads) throws IOException, InterruptedException {
    ExecutorService pool = Executors.newFixedThreadPool(threads);
    try {
      Deque<Future<List<YearFiles.Named>>> ahead = new ArrayDeque<>();
      for (YearAppointment sitting : plan.sittings()) {
        Callable<List<YearFiles.Named>> work = () -> files.of(sitting);
        ahead.add(pool.submit(work));
        if (ahead.size() >= threads * AHEAD_OF_EACH_CORE) {
          give(ahead.remove(), action);
        }
      }
      while (!ahead.isEmpty()) {
        give(ahead.remove(), action);
      }
    } finally {
      pool.shutdownNow();
    }
  }

  private static void give(Future<List<YearFiles.Named>> done, FileAction action)
      throws IOException, InterruptedException {
    try {
      for (YearFiles.Named file : done.get()) {
        action.take(file.name(), file.bytes());
      }
    } catch (ExecutionException e) {
      throw new IllegalStateException(e.getCause());
    }
  }

  /** The operators as the files name them (field {@value YearFiles#OPERATOR_FIELD}). */
  public static List<String> operators() {
    List<String> names = new ArrayList<>();
    for (int operator = 0; operator < YearPlan.OPERATORS; operator++) {
      names.add(YearPlan.operatorName(operator));
    }
    return names;
  }

  /** What is true of the year, in lines. */
  public List<String> truth() {
    if (!plan.stories()) {
      return List.of("no story");
    }
    return List.of(
        String.format(
            Locale.ROOT,
            "station %s: spot on the platen since %s",
            YearPlan.serial(YearPlan.DIRTY_STATION),
            YearPlan.DIRTY_SINCE),
        String.format(
            Locale.ROOT,
            "station %s: other encoder since %s",
            YearPlan.serial(YearPlan.ENCODER_STATION),
            YearPlan.ENCODER_SINCE),
        "operator " + YearPlan.operatorName(YearPlan.NARROW_OPERATOR) + ": rolls too narrowly");
  }
}
