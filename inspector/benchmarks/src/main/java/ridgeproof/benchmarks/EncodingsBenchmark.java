package ridgeproof.benchmarks;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import ridgeproof.examination.Examiner;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.transaction.reader.ParseLimits;
import ridgeproof.transaction.reader.TransactionReader;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.record.CharacterEncoding;
import ridgeproof.transaction.writer.FieldDraft;
import ridgeproof.transaction.writer.RecordDraft;
import ridgeproof.transaction.writer.TransactionWriter;
import ridgeproof.transaction.xml.writer.XmlTransactionWriter;

/** The structure of the same transaction in both encodings, with the hash that a command takes. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 10)
@Measurement(iterations = 20)
@Fork(1)
public class EncodingsBenchmark {

  private static final int IMAGES = 14;

  /** Bytes of each of 14 images: as WSQ makes them, and uncompressed. */
  @Param({"40000", "5360000"})
  public int imageBytes;

  @Param({"traditional", "xml"})
  public String encoding;

  private final ExaminationOptions options =
      ExaminationOptions.standard().withDepth(Depth.STRUCTURE);
  private Examiner examiner;
  private ByteSource bytes;

  @Setup
  public void write() throws IOException {
    SpecTables tables = SpecTables.open();
    examiner = new Examiner(tables, ParseLimits.standard());
    byte[] traditional = new TransactionWriter(CharacterEncoding.ASCII).write(records());
    bytes =
        ByteSource.of(
            encoding.equals("xml")
                ? new XmlTransactionWriter(tables)
                    .write(
                        new TransactionReader(tables, ParseLimits.standard())
                            .read(ByteSource.of(traditional)))
                : traditional);
  }

  private List<RecordDraft> records() {
    List<RecordDraft> records = new ArrayList<>();
    records.add(
        RecordDraft.tagged(
            1,
            List.of(
                text(1, 1, ""),
                text(1, 2, "0500"),
                text(1, 3, ""),
                text(1, 4, "FAUF"),
                text(1, 5, "20260302"),
                text(1, 7, "THP000000"),
                text(1, 8, "THP000001"),
                text(1, 9, "PILOT-0001"),
                text(1, 11, "00.00"),
                text(1, 12, "00.00"))));
    for (int position = 1; position <= IMAGES; position++) {
      byte[] image = new byte[imageBytes];
      new Random(position).nextBytes(image);
      records.add(
          RecordDraft.tagged(
              14,
              List.of(
                  text(14, 1, ""),
                  text(14, 2, Integer.toString(position)),
                  text(14, 3, "1"),
                  text(14, 4, "THP000001"),
                  text(14, 5, "20260302"),
                  text(14, 6, "2000"),
                  text(14, 7, "2680"),
                  text(14, 8, "1"),
                  text(14, 9, "500"),
                  text(14, 10, "500"),
                  text(14, 11, "NONE"),
                  text(14, 12, "8"),
                  text(14, 13, Integer.toString(position)),
                  FieldDraft.data(new FieldNumber(14, 999), ByteSource.of(image)))));
    }
    return records;
  }

  private static FieldDraft text(int type, int field, String value) {
    return FieldDraft.text(new FieldNumber(type, field), value);
  }

  /** Processor time: the clock says little on a machine that others use. */
  @Benchmark
  public void examine(ProcessorTime time) {
    time.measure(
        () -> {
          examiner.examine(bytes, options);
          return bytes.length();
        });
  }
}
