package ridgeproof.cli;

import static com.tngtech.archunit.base.DescribedPredicate.alwaysTrue;
import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackages;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.simpleName;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.codeUnits;
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
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import com.tngtech.archunit.library.dependencies.SliceAssignment;
import com.tngtech.archunit.library.dependencies.SliceIdentifier;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
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
        .layer("api")
        .definedBy("ridgeproof.api..")
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
        .whereLayer("api")
        .mayNotBeAccessedByAnyLayer()
        .whereLayer("desk")
        .mayOnlyBeAccessedByLayers("cli")
        .whereLayer("gate")
        .mayOnlyBeAccessedByLayers("desk", "cli")
        .whereLayer("ledger")
        .mayOnlyBeAccessedByLayers("desk", "cli")
        .whereLayer("report")
        .mayOnlyBeAccessedByLayers("ledger", "gate", "desk", "api", "cli")
        .whereLayer("examination")
        .mayOnlyBeAccessedByLayers("report", "ledger", "gate", "desk", "api", "cli")
        .whereLayer("ridges")
        .mayOnlyBeAccessedByLayers("examination", "report", "ledger", "desk", "cli")
        .whereLayer("corpus")
        .mayOnlyBeAccessedByLayers("cli")
        .whereLayer("imagery")
        .mayOnlyBeAccessedByLayers(
            "ridges", "examination", "report", "ledger", "desk", "corpus", "cli")
        .whereLayer("transaction")
        .mayOnlyBeAccessedByLayers(
            "imagery",
            "ridges",
            "examination",
            "report",
            "ledger",
            "gate",
            "desk",
            "api",
            "corpus",
            "cli")
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
        "ridgeproof.api..",
        "ridgeproof.gate..",
        "ridgeproof.testing..",
        "ridgeproof.corpus.batch..");
  }

  @Test
  void nothingButTheDeskOpensANetworkConnection() {
    noClasses()
        .that()
        .resideOutsideOfPackages("ridgeproof.desk.web..", "ridgeproof.testing..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("java.net..", "javax.net..", "java.net.http..")
        .check(CLASSES);
  }

  /** What other programs use stays as it is when the classes behind it change. */
  @Test
  void theLibraryShowsNoTypeOfAnotherPackage() {
    codeUnits()
        .that()
        .areDeclaredInClassesThat()
        .resideInAPackage("ridgeproof.api..")
        .and()
        .arePublic()
        .should(nameOnlyTypesOfTheLibrary())
        .check(CLASSES);
    classes()
        .that()
        .resideInAPackage("ridgeproof.api..")
        .and()
        .arePublic()
        .should()
        .beEnums()
        .orShould()
        .beRecords()
        .orShould()
        .haveSimpleName("TransactionChecker")
        .check(CLASSES);
  }

  private static ArchCondition<JavaCodeUnit> nameOnlyTypesOfTheLibrary() {
    return new ArchCondition<>("name only types of Java and of the library") {
      @Override
      public void check(JavaCodeUnit unit, ConditionEvents events) {
        Stream.concat(unit.getParameterTypes().stream(), Stream.of(unit.getReturnType()))
            .flatMap(type -> type.getAllInvolvedRawTypes().stream())
            .map(JavaClass::getBaseComponentType)
            .filter(type -> !type.isPrimitive())
            .filter(type -> !type.getPackageName().matches("java\\..*|ridgeproof\\.api"))
            .forEach(
                type ->
                    events.add(
                        SimpleConditionEvent.violated(
                            unit, unit.getFullName() + " names " + type.getFullName())));
      }
    };
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
