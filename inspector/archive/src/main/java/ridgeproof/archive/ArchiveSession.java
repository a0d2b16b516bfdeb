package ridgeproof.archive;

import org.apache.spark.SparkConf;
import org.apache.spark.SparkContext;
import org.apache.spark.SparkEnv;
import org.apache.spark.api.java.JavaSparkContext;
import org.apache.spark.sql.SparkSession;

/**
 * Opens Spark for the whole process: as {@code spark-submit} has set it, or in this process on all
 * cores.
 */
final class ArchiveSession {

  private ArchiveSession() {}

  /** Spark without SQL, which alone takes longer to start than the rest. */
  static JavaSparkContext context() {
    return JavaSparkContext.fromSparkContext(SparkContext.getOrCreate(settings()));
  }

  /** Spark with SQL. */
  static SparkSession open() {
    context();
    return SparkSession.builder().getOrCreate();
  }

  private static SparkConf settings() {
    SparkConf conf = new SparkConf();
    conf.setIfMissing("spark.master", "local[*]");
    conf.setIfMissing("spark.app.name", "ridgeproof archive");
    if (conf.get("spark.master").startsWith("local")) {
      conf.setIfMissing("spark.ui.enabled", "false");
      conf.setIfMissing("spark.sql.shuffle.partitions", "8");
      conf.setIfMissing("spark.driver.bindAddress", "127.0.0.1");
      conf.setIfMissing("spark.driver.host", "127.0.0.1");
    }
    conf.set("spark.sql.session.timeZone", "UTC");
    conf.set("spark.sql.datetime.java8API.enabled", "true");
    return conf;
  }

  /** Ends what was opened. */
  static void close() {
    if (SparkEnv.get() != null) {
      context().stop();
    }
  }
}
