package ridgeproof.spec;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import ridgeproof.spec.consistency.CaptureOrigin;
import ridgeproof.spec.consistency.ConsistencyTables;
import ridgeproof.spec.consistency.ImageRecordRow;
import ridgeproof.spec.consistency.MissingFingerField;
import ridgeproof.spec.descriptive.DescriptiveTextTables;
import ridgeproof.spec.layout.Code;
import ridgeproof.spec.layout.CodeTable;
import ridgeproof.spec.layout.RecordLayout;
import ridgeproof.spec.layout.RecordTypeRow;
import ridgeproof.spec.limit.CompressionLimit;
import ridgeproof.spec.limit.ImageSizeLimit;
import ridgeproof.spec.limit.MatchLikelihood;
import ridgeproof.spec.limit.PixelLimits;
import ridgeproof.spec.limit.ResolutionClass;
import ridgeproof.spec.limit.RidgeLimit;
import ridgeproof.spec.privacy.NonIdentifyingFields;
import ridgeproof.spec.rule.AnswerTables;
import ridgeproof.spec.rule.BureauMessage;
import ridgeproof.spec.rule.RuleCatalogue;
import ridgeproof.spec.rule.RuleRow;
import ridgeproof.spec.submission.SubmissionTables;
import ridgeproof.spec.table.Lazy;
import ridgeproof.spec.table.Source;
import ridgeproof.spec.table.Table;
import ridgeproof.spec.table.TableError;
import ridgeproof.spec.xml.XmlTables;

/**
 * The published layouts and codes. All but the catalogue and the lists of record types and code
 * tables is read when first asked for, and once, so that a command pays only for what its file
 * uses.
 */
public final class SpecTables {

  private static final String VERSION = "tables.sha256";

  private final RuleCatalogue catalogue;
  private final Map<Integer, RecordTypeRow> recordTypes;
  private final Map<String, CodeTableTitle> tableTitles;
  private final Map<Integer, RecordLayout> layouts = new ConcurrentHashMap<>();
  private final Map<String, CodeTable> codes = new ConcurrentHashMap<>();
  private final Lazy<Map<String, Document>> documents = new Lazy<>(SpecTables::readDocuments);
  private final Lazy<List<ImageRecordRow>> imageRecords =
      rows("layouts/image-records.csv", ImageRecordRow::of);
  private final Lazy<List<ImageSizeLimit>> imageSizes =
      rows("limits/image-sizes.csv", ImageSizeLimit::of);
  private final Lazy<List<ResolutionClass>> resolutionClasses =
      rows("limits/resolution-classes.csv", ResolutionClass::of);
  private final Lazy<List<MissingFingerField>> missingFingerFields =
      rows("layouts/missing-fingers.csv", MissingFingerField::of);
  private final Lazy<List<CaptureOrigin>> captureOrigins =
      rows("layouts/capture-origins.csv", CaptureOrigin::of);
  private final Lazy<Set<String>> impressionMisfits = new Lazy<>(SpecTables::readImpressionMisfits);
  private final Lazy<List<CompressionLimit>> compressionCeilings =
      rows("limits/compression-ceilings.csv", CompressionLimit::of);
  private final Lazy<Map<String, Source>> formatSources = new Lazy<>(SpecTables::readFormatSources);
  private final Lazy<List<FileSignature>> fileSignatures =
      rows("files/signatures.csv", FileSignature::of);
  private final Lazy<PixelLimits> pixelLimits = new Lazy<>(PixelLimits::load);
  private final Lazy<List<RidgeLimit>> ridgeLimits = new Lazy<>(RidgeLimit::load);
  private final Lazy<List<MatchLikelihood>> matchLikelihoods = new Lazy<>(MatchLikelihood::load);
  private final Lazy<List<SubmissionProfile>> profiles = new Lazy<>(SubmissionProfile::load);
  private final Lazy<List<Table.Row>> recordResolutions =
      new Lazy<>(() -> Table.resource("limits/record-resolutions.csv").rows());
  private final AnswerTables answers;
  private final ConsistencyTables agreements = new ConsistencyTables();
  private final DescriptiveTextTables particulars = new DescriptiveTextTables();
  private final SubmissionTables submissions = new SubmissionTables();
  private final NonIdentifyingFields harmless = new NonIdentifyingFields();
  private final Lazy<XmlTables> xml = new Lazy<>(XmlTables::new);

  /** A line of the index of code tables. */
  public record CodeTableTitle(String table, String title, String usedBy, Source source) {}

  /**
   * A document that the tables cite.
   *
   * @param domain the domain (field 1.013) whose transactions it binds, where it does not bind all
   */
  public record Document(String key, String title, Optional<String> domain) {}

  private SpecTables(
      RuleCatalogue catalogue,
      Map<Integer, RecordTypeRow> recordTypes,
      Map<String, CodeTableTitle> tableTitles) {
    this.catalogue = catalogue;
    this.answers = new AnswerTables(catalogue);
    this.recordTypes = recordTypes;
    this.tableTitles = tableTitles;
  }

  /**
   * Opens the tables that come with Ridgeproof.
   *
   * @throws TableError if a row cannot be used
   */
  public static SpecTables open() {
    Map<Integer, RecordTypeRow> types = new LinkedHashMap<>();
    for (Table.Row row : Table.resource("layouts/record-types.csv").rows()) {
      RecordTypeRow type = RecordTypeRow.of(row);
      types.put(type.type(), type);
    }
    Map<String, CodeTableTitle> titles = new LinkedHashMap<>();
    for (Table.Row row : Table.resource("codes/index.csv").rows()) {
      String table = row.required("table");
      titles.put(
          table,
          new CodeTableTitle(table, row.required("title"), row.text("used_by"), row.source()));
    }
    return new SpecTables(RuleCatalogue.load(), types, titles);
  }

  /** The same tables with further rows of the catalogue, which come with rules. */
  public SpecTables withRules(List<RuleRow> rows) {
    return rows.isEmpty() ? this : new SpecTables(catalogue.plus(rows), recordTypes, tableTitles);
  }

  private static <T> Lazy<List<T>> rows(String file, Function<Table.Row, T> of) {
    return new Lazy<>(() -> Table.resource(file).rows().stream().map(of).toList());
  }

  /**
   * What tells these tables from others: 64 hexadecimal digits of a SHA-256 over the names and
   * contents of all of them, made by the build.
   */
  public static String version() {
    try (InputStream in = SpecTables.class.getResourceAsStream(VERSION)) {
      return new String(in.readAllBytes(), StandardCharsets.US_ASCII).strip();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The tables of the XML encoding. */
  public XmlTables xml() {
    return xml.get();
  }

  public RuleCatalogue catalogue() {
    return catalogue;
  }

  /** The record type, if the standard has it. */
  public Optional<RecordTypeRow> recordType(int type) {
    return Optional.ofNullable(recordTypes.get(type));
  }

  public List<RecordTypeRow> recordTypes() {
    return List.copyOf(recordTypes.values());
  }

  /** The layout of a type; without rows where the standard has no such type. */
  public RecordLayout layout(int recordType) {
    return recordTypes.containsKey(recordType)
        ? layouts.computeIfAbsent(recordType, RecordLayout::load)
        : RecordLayout.unknown(recordType);
  }

  public List<CodeTableTitle> codeTables() {
    return List.copyOf(tableTitles.values());
  }

  /**
   * A code table.
   *
   * @throws IllegalArgumentException if the index does not list it
   */
  public CodeTable codes(String table) {
    if (!tableTitles.containsKey(table)) {
      throw new IllegalArgumentException("no code table " + table);
    }
    return codes.computeIfAbsent(
        table, name -> name.equals("countries") ? CodeTable.countries() : CodeTable.load(name));
  }

  /** What a friction ridge position is called, such as "right thumb"; its number where unknown. */
  public String positionName(int code) {
    return codes("friction-ridge-positions")
        .find(Integer.toString(code))
        .map(Code::name)
        .orElse("position " + code);
  }

  public boolean hasCodeTable(String table) {
    return tableTitles.containsKey(table);
  }

  /** The documents that the tables cite, by key. */
  public Map<String, Document> documents() {
    return documents.get();
  }

  private static Map<String, Document> readDocuments() {
    Map<String, Document> documents = new LinkedHashMap<>();
    for (Table.Row row : Table.resource("sources.csv").rows()) {
      String key = row.required("key");
      documents.put(key, new Document(key, row.required("title"), row.optional("domain")));
    }
    return Collections.unmodifiableMap(documents);
  }

  /** Which fields describe the image of a record, for each type that has one. */
  public List<ImageRecordRow> imageRecords() {
    return imageRecords.get();
  }

  /** The largest image for each position. */
  public List<ImageSizeLimit> imageSizes() {
    return imageSizes.get();
  }

  /** The scanning resolutions that the standard names. */
  public List<ResolutionClass> resolutionClasses() {
    return resolutionClasses.get();
  }

  /** The fields that declare fingers missing. */
  public List<MissingFingerField> missingFingerFields() {
    return missingFingerFields.get();
  }

  /** The fields that tell where a capture comes from, of each kind the most telling first. */
  public List<CaptureOrigin> captureOrigins() {
    return captureOrigins.get();
  }

  /** What the records of one transaction have to agree in. */
  public ConsistencyTables agreements() {
    return agreements;
  }

  /** Kinds of position and of impression that exclude each other, as "slap rolled". */
  public Set<String> impressionMisfits() {
    return impressionMisfits.get();
  }

  private static Set<String> readImpressionMisfits() {
    Set<String> misfits = new LinkedHashSet<>();
    for (Table.Row row : Table.resource("limits/impression-misfits.csv").rows()) {
      misfits.add(row.required("position_kind") + " " + row.required("impression_kind"));
    }
    return Collections.unmodifiableSet(misfits);
  }

  /**
   * The resolution classes in which a record type is exchanged; none where the standard leaves it
   * open.
   */
  public List<ResolutionClass> resolutionsOf(int recordType) {
    List<ResolutionClass> classes = resolutionClasses();
    return recordResolutions.get().stream()
        .filter(row -> row.parse("record_type", Integer::parseInt) == recordType)
        .flatMap(row -> classes.stream().filter(c -> c.name().equals(row.required("class"))))
        .toList();
  }

  /** What is known of the fields of the Type-2 record beyond their layout. */
  public DescriptiveTextTables particulars() {
    return particulars;
  }

  /** What each type of transaction has to hold. */
  public SubmissionTables submissions() {
    return submissions;
  }

  /** What of a transaction tells of nobody. */
  public NonIdentifyingFields harmless() {
    return harmless;
  }

  /** How far images may be compressed. */
  public List<CompressionLimit> compressionCeilings() {
    return compressionCeilings.get();
  }

  /** What similarities of two prints weigh, in rising order. */
  public List<MatchLikelihood> matchLikelihoods() {
    return matchLikelihoods.get();
  }

  /** What bureaus answer, and what the vendor of a station can check. */
  public AnswerTables answers() {
    return answers;
  }

  /** What bureaus say of transactions that they do not take, those with a code first. */
  public List<BureauMessage> bureauMessages() {
    return answers.bureauMessages();
  }

  /** What measures of decoded pixels are held against. */
  public PixelLimits pixelLimits() {
    return pixelLimits.get();
  }

  /** What measures of ridges are held against. */
  public List<RidgeLimit> ridgeLimits() {
    return ridgeLimits.get();
  }

  /** The document that describes an image format, by the name of the format. */
  public Optional<Source> formatSource(String format) {
    return Optional.ofNullable(formatSources.get().get(format));
  }

  private static Map<String, Source> readFormatSources() {
    Map<String, Source> sources = new LinkedHashMap<>();
    for (Table.Row row : Table.resource("files/formats.csv").rows()) {
      sources.put(row.required("format"), row.source());
    }
    return sources;
  }

  /** How files begin that are no transactions, the most telling first. */
  public List<FileSignature> fileSignatures() {
    return fileSignatures.get();
  }

  /** The kinds of submission that come with Ridgeproof. */
  public List<SubmissionProfile> profiles() {
    return profiles.get();
  }

  /**
   * The kind of submission of that name.
   *
   * @throws IllegalArgumentException if there is none
   */
  public SubmissionProfile profile(String name) {
    return profileNamed(name)
        .orElseThrow(() -> new IllegalArgumentException("no submission profile " + name));
  }

  /** The kind of submission of that name, if there is one. */
  public Optional<SubmissionProfile> profileNamed(String name) {
    return profiles().stream().filter(profile -> profile.name().equals(name)).findFirst();
  }

  /** What to say where there is no kind of submission of that name. */
  public String noProfile(String name) {
    return profiles().stream()
        .map(SubmissionProfile::name)
        .collect(Collectors.joining(", ", "no profile " + name + "; available: ", ""));
  }
}
