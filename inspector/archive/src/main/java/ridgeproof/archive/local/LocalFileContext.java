package ridgeproof.archive.local;

import java.io.IOException;
import java.net.URI;
import java.net.URISyntaxException;
import org.apache.hadoop.conf.Configuration;
import org.apache.hadoop.fs.DelegateToFileSystem;

/** {@link LocalFiles} for a file context, which finds its constructor by name. */
final class LocalFileContext extends DelegateToFileSystem {

  /**
   * @param address ignored, since there is one of this machine
   */
  LocalFileContext(URI address, Configuration configuration)
      throws IOException, URISyntaxException {
    super(LocalFiles.ROOT, LocalFiles.open(configuration), configuration, "file", false);
  }
}
