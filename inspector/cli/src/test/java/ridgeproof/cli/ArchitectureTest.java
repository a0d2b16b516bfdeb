package ridgeproof.cli;

import static com.tngtech.archunit.base.DescribedPredicate.alwaysTrue;
import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackages;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.simpleName;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.mapping;
import static java.util.stream.Collectors.toList;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.library.dependencies.SliceAssignment;
import com.tngtech.archunit.library.dependencies.SliceIdentifier;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.rules.Rule;

class ArchitectureTest {

  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("ridgeproof");

  @Test
  void arrowsPointOneWay() {
    layeredArchitecture()
        .consideringOnlyDependenciesInLayers()
        .layer("spec")
        .definedBy("ridgeproof.spec..")
        .layer("transaction")
        .definedBy("ridgeproof.transaction..", "ridgeproof.finding..")
        .layer("imagery")
        .definedBy("ridgeproof.imagery..")
        .layer("ridges")
        .definedBy("ridgeproof.ridges..")
        .layer("examination")
        .definedBy("ridgeproof.examination..")
        .layer("report")
        .definedBy("ridgeproof.report..")
        .layer("corpus")
        .definedBy("ridgeproof.corpus..")
        .layer("ledger")
        .definedBy("ridgeproof.ledger..")
        .layer("gate")
        .definedBy("ridgeproof.gate..")
        .layer("desk")
        .definedBy("ridgeproof.desk..")
        .layer("cli")
        .definedBy("ridgeproof.cli..")
        .whereLayer("cli")
        .mayNotBeAccessedByAnyLayer()
        .whereLayer("desk")
        .mayOnlyBeAccessedByLayers("cli")
        .whereLayer("gate")
        .mayOnlyBeAccessedByLayers("desk", "cli")
        .whereLayer("ledger")
        .mayOnlyBeAccessedByLayers("desk", "cli")
        .whereLayer("report")
        .mayOnlyBeAccessedByLayers("ledger", "gate", "desk", "cli")
        .whereLayer("examination")
        .mayOnlyBeAccessedByLayers("report", "ledger", "gate", "desk", "cli")
        .whereLayer("ridges")
        .mayOnlyBeAccessedByLayers("examination", "report", "ledger", "desk", "cli")
        .whereLayer("corpus")
        .mayOnlyBeAccessedByLayers("cli")
        .whereLayer("imagery")
        .mayOnlyBeAccessedByLayers(
            "ridges", "examination", "report", "ledger", "desk", "corpus", "cli")
        .whereLayer("transaction")
        .mayOnlyBeAccessedByLayers(
            "imagery", "ridges", "examination", "report", "ledger", "gate", "desk", "corpus", "cli")
        .check(CLASSES);
  }

  private static final SliceAssignment PACKAGES =
      new SliceAssignment() {
        @Override
        public SliceIdentifier getIdentifierOf(JavaClass type) {
          return SliceIdentifier.of(type.getPackageName());
        }

        @Override
        public String getDescription() {
          return "packages";
        }
      };

  @Test
  void noPackageDependsOnItselfByWayOfAnother() {
    slices()
        .assignedFrom(PACKAGES)
        .should()
        .beFreeOfCycles()
        .ignoreDependency(areTemplates(), alwaysTrue())
        .check(CLASSES);
  }

  /** Generated, and filled by the classes whose models they show. */
  private static DescribedPredicate<JavaClass> areTemplates() {
    return resideInAPackage("ridgeproof.report.template..");
  }

  @Test
  void nobodyReachesIntoTheInsidesOfWsqAndRidges() {
    noClasses()
        .that()
        .resideOutsideOfPackages("ridgeproof.imagery..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(
            "ridgeproof.imagery.wsq.subband..",
            "ridgeproof.imagery.wsq.wavelet..",
            "ridgeproof.imagery.wsq.entropy..")
        .check(CLASSES);
    noClasses()
        .that()
        .resideOutsideOfPackages("ridgeproof.ridges..")
        .should()
        .dependOnClassesThat(
            resideInAPackage("ridgeproof.ridges.map..")
                .and(not(simpleName("RotatedBox").or(simpleName("EdgeContact")))))
        .check(CLASSES);
  }

  @Test
  void rulesAreMadeByTheirPackageAlone() {
    classes().that().implement(Rule.class).should().notBePublic().check(CLASSES);
  }

  @Test
  void noClassNameStandsTwice() {
    Map<String, List<String>> named =
        CLASSES.stream()
            .filter(type -> type.isTopLevelClass() && !areTemplates().test(type))
            .filter(type -> !type.getSimpleName().equals("package-info"))
            .collect(
                groupingBy(JavaClass::getSimpleName, mapping(JavaClass::getPackageName, toList())));
    named.values().removeIf(packages -> packages.size() == 1);
    assertEquals(Map.of(), named);
  }

  @Test
  void onlyCommandsKnowTheFileSystem() {
    noClasses()
        .that(areNoCommands())
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("java.nio.file..")
        .check(CLASSES);
    noClasses()
        .that(areNoCommands())
        .should()
        .dependOnClassesThat()
        .haveFullyQualifiedName("java.io.File")
        .check(CLASSES);
  }

  private static DescribedPredicate<JavaClass> areNoCommands() {
    return resideOutsideOfPackages(
        "ridgeproof.cli..",
        "ridgeproof.gate..",
        "ridgeproof.testing..",
        "ridgeproof.corpus.batch..");
  }

  @Test
  void nothingButTheDeskOpensANetworkConnection() {
    noClasses()
        .that()
        .resideOutsideOfPackages("ridgeproof.desk.web..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("java.net..", "javax.net..", "java.net.http..")
        .check(CLASSES);
  }

  @Test
  void nothingStaticCanChange() {
    fields().that().areStatic().should().beFinal().check(CLASSES);
  }

  @Test
  void noGrabBags() {
    classes().should().haveNameNotMatching(".*(Utils?|Helper|Manager|Impl)$").check(CLASSES);
  }
}
