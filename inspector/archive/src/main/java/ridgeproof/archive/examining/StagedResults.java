package ridgeproof.archive.examining;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.Serializable;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.apache.hadoop.conf.Configuration;
import org.apache.hadoop.fs.Path;
import org.apache.spark.TaskContext;
import ridgeproof.archive.local.ArchiveFileSystem;
import scala.Tuple2;

/**
 * The file to which a task wrote the results of its part. Every attempt of a task has a file of its
 * own; the driver hears of one of them and forgets the others.
 *
 * @param repeats how many of the results are of bytes that the archive has
 */
public record StagedResults(String address, long results, long repeats) implements Serializable {

  private static final int BUFFER = 1 << 16;

  /** Writes what is there of results; a null among them counts as none. */
  static StagedResults write(Iterator<FileResult> results, String folder, Configuration hadoop) {
    TaskContext task = TaskContext.get();
    Path path =
        new Path(
            folder,
            String.format(Locale.ROOT, "part-%05d-%d", task.partitionId(), task.taskAttemptId()));
    long count = 0;
    long repeats = 0;
    try (DataOutputStream out =
        new DataOutputStream(
            new BufferedOutputStream(
                ArchiveFileSystem.of(path, hadoop).create(path, true), BUFFER))) {
      while (results.hasNext()) {
        FileResult result = results.next();
        if (Objects.isNull(result)) {
          continue;
        }
        ResultKey key = result.key();
        byte[] bytes = result.bytes();
        out.writeLong(key.day());
        out.writeUTF(key.fileHash());
        out.writeUTF(key.input());
        out.writeInt(bytes.length);
        out.write(bytes);
        count++;
        repeats += result.kind() == FileResult.Kind.REPEAT ? 1 : 0;
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return new StagedResults(path.toString(), count, repeats);
  }

  /** All results of the file. */
  public List<Tuple2<ResultKey, byte[]>> read(Configuration hadoop) throws IOException {
    Path path = new Path(address);
    List<Tuple2<ResultKey, byte[]>> all = new ArrayList<>();
    try (DataInputStream in =
        new DataInputStream(
            new BufferedInputStream(ArchiveFileSystem.open(path, hadoop), BUFFER))) {
      for (long i = 0; i < results; i++) {
        ResultKey key = new ResultKey(in.readLong(), in.readUTF(), in.readUTF());
        all.add(new Tuple2<>(key, in.readNBytes(in.readInt())));
      }
    }
    return all;
  }
}
