package ridgeproof.spec.consistency;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.layout.FieldRow;
import ridgeproof.spec.layout.ItemReference;
import ridgeproof.spec.limit.CaptureDateLimit;
import ridgeproof.spec.limit.DisallowedCompression;
import ridgeproof.spec.limit.MinimumResolution;
import ridgeproof.spec.table.Source;

class ConsistencyTablesTest {

  private static final SpecTables TABLES = SpecTables.open();
  private static final ConsistencyTables AGREEMENTS = TABLES.agreements();

  /** Fields that the tables name, beside the items that they name in them. */
  private static Stream<ItemReference> named() {
    List<ItemReference> named = new ArrayList<>(AGREEMENTS.featurePositions());
    for (CrossReference row : AGREEMENTS.crossReferences()) {
      named.add(row.from());
      named.add(new ItemReference(row.target(), 1));
    }
    for (SegmentField row : AGREEMENTS.segmentFields()) {
      row.positionItem().ifPresent(item -> named.add(new ItemReference(row.field(), item)));
      named.add(new ItemReference(row.field(), row.firstItem() + 2));
    }
    for (QualityField row : AGREEMENTS.qualityFields()) {
      row.positionItem().ifPresent(item -> named.add(new ItemReference(row.field(), item)));
      named.add(new ItemReference(row.field(), row.valueItem()));
      row.methodItems().forEach(item -> named.add(new ItemReference(row.field(), item)));
    }
    for (FeaturePoints row : AGREEMENTS.featurePoints()) {
      named.add(new ItemReference(row.field(), row.firstItem()));
      Stream.of(row.frameWidth(), row.frameHeight()).flatMap(Optional::stream).forEach(named::add);
    }
    for (MinutiaList row : AGREEMENTS.minutiaLists()) {
      named.add(new ItemReference(row.field(), row.indexItem()));
      named.add(new ItemReference(row.countField(), 1));
    }
    return Stream.concat(named.stream(), single().map(field -> new ItemReference(field, 1)));
  }

  private static Stream<FieldNumber> single() {
    List<FieldNumber> named = new ArrayList<>();
    for (FeatureFrame row : AGREEMENTS.featureFrames()) {
      named.addAll(
          List.of(
              row.width(),
              row.height(),
              row.scaleUnits(),
              row.horizontalScale(),
              row.verticalScale()));
    }
    AGREEMENTS
        .descriptorFields()
        .forEach(row -> named.addAll(List.of(row.field(), row.positionsField())));
    AGREEMENTS.captureDates().forEach(row -> named.add(row.field()));
    AGREEMENTS.minimumResolutions().forEach(row -> named.add(row.field()));
    return named.stream();
  }

  @Test
  void everyFieldAndItemThatIsNamedHasARowInItsLayout() {
    List<ItemReference> unknown = named().filter(item -> !inLayout(item)).toList();
    assertEquals(List.of(), unknown);
    assertTrue(named().count() > 60);
  }

  private static boolean inLayout(ItemReference reference) {
    List<FieldRow> rows =
        TABLES.layout(reference.field().recordType()).rows().stream()
            .filter(row -> row.number().equals(reference.field()))
            .toList();
    boolean whole = rows.stream().allMatch(row -> row.item().isEmpty());
    return !rows.isEmpty()
        && (whole
            ? reference.item() == 1
            : rows.stream().anyMatch(row -> row.item().orElse(0) == reference.item()));
  }

  @Test
  void everyRuleOfThePrintCompressionsIsInTheCatalogue() {
    for (DisallowedCompression row : AGREEMENTS.printCompressions()) {
      assertTrue(TABLES.catalogue().find(row.rule()).isPresent(), row.rule());
    }
  }

  @Test
  void featureRecordsDescribeTypesThatHaveImages() {
    List<Integer> imageTypes = TABLES.imageRecords().stream().map(ImageRecordRow::type).toList();
    AGREEMENTS
        .describedTypes()
        .values()
        .forEach(types -> assertTrue(imageTypes.containsAll(types), types.toString()));
  }

  @Test
  void everySourceIsAKnownDocument() {
    Stream<Source> sources =
        Stream.of(
                AGREEMENTS.crossReferences().stream().map(CrossReference::source),
                AGREEMENTS.segmentFields().stream().map(SegmentField::source),
                AGREEMENTS.qualityFields().stream().map(QualityField::source),
                AGREEMENTS.featurePoints().stream().map(FeaturePoints::source),
                AGREEMENTS.minutiaLists().stream().map(MinutiaList::source),
                AGREEMENTS.featureFrames().stream().map(FeatureFrame::source),
                AGREEMENTS.descriptorFields().stream().map(DescriptorField::source),
                AGREEMENTS.captureDates().stream().map(CaptureDateLimit::source),
                AGREEMENTS.minimumResolutions().stream().map(MinimumResolution::source),
                AGREEMENTS.printCompressions().stream().map(DisallowedCompression::source))
            .flatMap(stream -> stream);
    sources.forEach(
        source -> assertTrue(TABLES.documents().containsKey(source.document()), source.document()));
  }

  @Test
  void aThresholdIsFoundByNameAndAnUnknownNameIsADefect() {
    assertEquals(50, AGREEMENTS.threshold("segment-overlap"));
    assertThrows(IllegalArgumentException.class, () -> AGREEMENTS.threshold("no-such"));
  }

  @Test
  void anItemWithoutNumberIsTheFirst() {
    assertEquals(new ItemReference(new FieldNumber(9, 128), 1), ItemReference.parse("9.128"));
    assertEquals(new ItemReference(new FieldNumber(9, 300), 2), ItemReference.parse("9.300/2"));
  }
}
