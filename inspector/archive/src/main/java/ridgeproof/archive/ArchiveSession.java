package ridgeproof.archive;

import org.apache.spark.SparkConf;
import org.apache.spark.sql.SparkSession;

/**
 * Opens Spark for the whole process: as {@code spark-submit} has set it, or in this process on all
 * cores.
 */
final class ArchiveSession {

  private ArchiveSession() {}

  static SparkSession open() {
    SparkConf conf = new SparkConf();
    conf.setIfMissing("spark.master", "local[*]");
    conf.setIfMissing("spark.app.name", "ridgeproof archive");
    if (conf.get("spark.master").startsWith("local")) {
      conf.setIfMissing("spark.ui.enabled", "false");
      conf.setIfMissing("spark.sql.shuffle.partitions", "8");
      conf.setIfMissing("spark.driver.bindAddress", "127.0.0.1");
      conf.setIfMissing("spark.driver.host", "127.0.0.1");
    }
    conf.setIfMissing("spark.sql.parquet.compression.codec", "zstd");
    conf.set("spark.sql.session.timeZone", "UTC");
    conf.set("spark.sql.datetime.java8API.enabled", "true");
    return SparkSession.builder().config(conf).getOrCreate();
  }

  /** Ends what was opened. */
  static void close() {
    if (SparkSession.getDefaultSession().isDefined()) {
      SparkSession.getDefaultSession().get().stop();
    }
  }
}
