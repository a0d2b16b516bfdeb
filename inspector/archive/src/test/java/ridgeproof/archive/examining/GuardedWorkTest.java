package ridgeproof.archive.examining;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.concurrent.atomic.AtomicInteger;
import org.apache.spark.sql.RowFactory;
import org.junit.jupiter.api.Test;

/** Whatever an examination does, the task that asked for it goes on. */
class GuardedWorkTest {

  private static final FileResult RESULT = FileResult.repeat(RowFactory.create("whole"));

  private static GuardedWork.Broken broken(GuardedWork.Examining examining) {
    try (GuardedWork work = new GuardedWork(Duration.ofMillis(200))) {
      GuardedWork.Broken broken = assertThrows(GuardedWork.Broken.class, () -> work.of(examining));
      assertEquals(RESULT, work.of(() -> RESULT), "the next file is examined");
      return broken;
    } catch (GuardedWork.Broken e) {
      throw new AssertionError(e);
    }
  }

  @Test
  void aDefectIsToldByItsPlaceAndNeverByItsMessage() {
    GuardedWork.Broken broken =
        broken(
            () -> {
              throw new IllegalStateException("SPECIMEN,ADA");
            });
    assertEquals(Reason.INTERNAL_ERROR, broken.reason());
    assertTrue(broken.getMessage().startsWith("java.lang.IllegalStateException at "));
    assertFalse(broken.getMessage().contains("SPECIMEN"));
  }

  private static int depth(int level) {
    return level < 0 ? level : depth(level + 1) + 1;
  }

  @Test
  void recursionWithoutEndIsADefect() {
    assertEquals(
        Reason.INTERNAL_ERROR,
        broken(() -> FileResult.repeat(RowFactory.create(depth(0)))).reason());
  }

  @Test
  void workWithoutEndIsGivenUp() {
    GuardedWork.Broken broken =
        broken(
            () -> {
              while (!Thread.currentThread().isInterrupted()) {
                Thread.onSpinWait();
              }
              return RESULT;
            });
    assertEquals(Reason.OUT_OF_TIME, broken.reason());
  }

  @Test
  void whatFitsIntoMemoryAloneIsTriedOnceMore() throws GuardedWork.Broken {
    AtomicInteger times = new AtomicInteger();
    try (GuardedWork work = new GuardedWork(Duration.ofSeconds(10))) {
      FileResult result =
          work.of(
              () -> {
                if (times.incrementAndGet() == 1) {
                  throw new OutOfMemoryError();
                }
                return RESULT;
              });
      assertEquals(RESULT, result);
    }
    GuardedWork.Broken broken =
        broken(
            () -> {
              throw new OutOfMemoryError();
            });
    assertEquals(Reason.OUT_OF_MEMORY, broken.reason());
  }
}
