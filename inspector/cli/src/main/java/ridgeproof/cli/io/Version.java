package ridgeproof.cli.io;

import picocli.CommandLine.IVersionProvider;
import ridgeproof.report.ToolFacts;

/** The version that the build wrote into the manifest. */
public final class Version implements IVersionProvider {

  @Override
  public String[] getVersion() {
    return new String[] {"ridgeproof " + number()};
  }

  /** What a report says of the tool that made it. */
  public static ToolFacts facts() {
    return new ToolFacts(
        number(),
        System.getProperty("java.runtime.version") + ", " + System.getProperty("java.vendor"),
        System.getProperty("os.name")
            + " "
            + System.getProperty("os.version")
            + ", "
            + System.getProperty("os.arch"));
  }

  /** Such as 0.1.0. */
  public static String number() {
    String version = Version.class.getPackage().getImplementationVersion();
    return version == null ? "(from classes)" : version;
  }
}
