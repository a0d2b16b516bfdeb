package ridgeproof.ledger.store;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.Statement;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;

/** The same on PostgreSQL: a server of Debian's package, started for this test alone. */
@Tag("slow")
class PostgresLedgerTest extends LedgerSuite {

  private static Optional<PostgresServer> server = Optional.empty();
  private int count;

  @BeforeAll
  static void start() throws IOException, InterruptedException {
    server = PostgresServer.start(Path.of("target"));
    String needed =
        "PostgreSQL (Debian package postgresql), which starts here and is not run as root";
    if (server.isEmpty() && "true".equals(System.getenv("CI"))) {
      throw new AssertionError("CI needs " + needed);
    }
    if (server.isEmpty()) {
      System.out.println("skipped: no " + needed);
    }
    Assumptions.assumeTrue(server.isPresent(), "no " + needed);
  }

  @AfterAll
  static void stop() throws IOException, InterruptedException {
    if (server.isPresent()) {
      server.get().stop();
    }
  }

  @Override
  String newAddress() throws Exception {
    String name = "ledger" + ++count + Long.toString(System.nanoTime(), 36);
    String main = server.orElseThrow().address("postgres");
    try (Connection connection = Database.of(main).connect(main);
        Statement statement = connection.createStatement()) {
      statement.execute("CREATE DATABASE " + name);
    }
    return server.orElseThrow().address(name);
  }
}
