package ridgeproof.cli;

import picocli.CommandLine.IVersionProvider;

/** The version that the build wrote into the manifest. */
final class Version implements IVersionProvider {

  @Override
  public String[] getVersion() {
    String version = Version.class.getPackage().getImplementationVersion();
    return new String[] {"ridgeproof " + (version == null ? "(from classes)" : version)};
  }
}
