package ridgeproof.cli.option;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javax.xml.XMLConstants;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.SchemaFactory;
import org.xml.sax.SAXException;
import ridgeproof.cli.io.CommandFailure;
import ridgeproof.cli.io.IoErrorMessages;
import ridgeproof.examination.xml.SchemaCheck;
import ridgeproof.spec.xml.XmlTables;

/** The schemas in a folder: the one that declares the package, and those that it imports. */
public final class SchemaFolder {

  private static final String DECLARES =
      "name=\"" + XmlTables.PACKAGE.substring(XmlTables.PACKAGE.indexOf(':') + 1) + "\"";

  private SchemaFolder() {}

  /** Loads them; nothing is fetched from elsewhere. */
  public static SchemaCheck open(Path folder) {
    Path entry = entry(folder);
    try {
      SchemaFactory factory = SchemaFactory.newInstance(XMLConstants.W3C_XML_SCHEMA_NS_URI);
      factory.setProperty(XMLConstants.ACCESS_EXTERNAL_SCHEMA, "file");
      factory.setProperty(XMLConstants.ACCESS_EXTERNAL_DTD, "");
      return new SchemaCheck(factory.newSchema(new StreamSource(entry.toFile())));
    } catch (SAXException e) {
      throw CommandFailure.inputOutput(entry + ": cannot be read as a schema");
    }
  }

  private static Path entry(Path folder) {
    try (Stream<Path> files = Files.walk(folder)) {
      List<Path> schemas = files.filter(file -> file.toString().endsWith(".xsd")).sorted().toList();
      for (Path schema : schemas) {
        if (Files.readString(schema, StandardCharsets.UTF_8).contains(DECLARES)) {
          return schema;
        }
      }
    } catch (IOException e) {
      throw CommandFailure.inputOutput(IoErrorMessages.of(folder, e));
    }
    throw CommandFailure.inputOutput(folder + ": has no schema that declares " + XmlTables.PACKAGE);
  }
}
