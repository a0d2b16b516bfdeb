package ridgeproof.archive.input;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ByteBinsTest {

  private static List<ArchiveInput> inputs(int count, Random random, int largest) {
    List<ArchiveInput> inputs = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      inputs.add(new ArchiveInput("/cards/" + i, random.nextInt(largest), i, null));
    }
    return inputs;
  }

  @Test
  void everyInputIsInOnePartAndPartsHaveAboutAsManyBytes() {
    Random random = new Random(7);
    for (int round = 0; round < 50; round++) {
      List<ArchiveInput> inputs = inputs(1 + random.nextInt(2000), random, 2_000_000);
      List<List<ArchiveInput>> parts = ByteBins.of(inputs, 48);
      assertEquals(Math.min(48, inputs.size()), parts.size());
      List<ArchiveInput> all = new ArrayList<>(parts.stream().flatMap(List::stream).toList());
      all.sort(Comparator.comparingLong(ArchiveInput::modified));
      assertEquals(inputs, all);
      long most = bytes(parts.get(0));
      long least = bytes(parts.get(parts.size() - 1));
      assertTrue(most - least <= 2_100_000, most + " and " + least);
    }
  }

  private static long bytes(List<ArchiveInput> part) {
    return part.stream().mapToLong(ArchiveInput::bytes).sum();
  }

  @Test
  void aLargeFileIsAPartOfItsOwnAndManyBytesAreManyParts() {
    List<ArchiveInput> inputs = inputs(1000, new Random(1), 1000);
    inputs.add(new ArchiveInput("/cards/large", 500_000_000L, 0, null));
    List<List<ArchiveInput>> parts = ByteBins.of(inputs, 4);
    assertEquals(1, parts.get(0).size());
    List<ArchiveInput> large = new ArrayList<>();
    for (int i = 0; i < 100; i++) {
      large.add(new ArchiveInput("/cards/" + i, 400_000_000L, 0, null));
    }
    assertEquals(100, ByteBins.of(large, 4).size());
  }

  @Test
  void aBatchEndsByFilesOrBytesAndLeavesOutWhatIsThere() {
    List<ArchiveInput> inputs = new ArrayList<>();
    for (int i = 0; i < 10; i++) {
      inputs.add(new ArchiveInput("/cards/" + i, 100, i, null));
    }
    InputBatches batches =
        new InputBatches(inputs.iterator(), input -> input.modified() != 3, 4, 250);
    List<Integer> sizes = new ArrayList<>();
    for (List<ArchiveInput> batch = batches.next(); !batch.isEmpty(); batch = batches.next()) {
      sizes.add(batch.size());
    }
    assertEquals(List.of(3, 3, 3), sizes);
    assertEquals(1, batches.leftOut());
  }
}
