package org.skewback;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** The one-way streets of the core: who may know whom. */
@AnalyzeClasses(packages = "org.skewback", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

    private static final String PACKAGE = "org.skewback.";

    @ArchTest
    static final ArchRule displayKnowsNothing =
            classes()
                    .that()
                    .resideInAPackage(PACKAGE + "display")
                    .should()
                    .onlyDependOnClassesThat()
                    .resideInAnyPackage("java..", PACKAGE + "display", "org.jspecify..")
                    .because("a kernel of another version must be able to speak it");

    @ArchTest
    static final ArchRule quantityKnowsOnlyDisplay =
            classes()
                    .that()
                    .resideInAPackage(PACKAGE + "quantity")
                    .should()
                    .onlyDependOnClassesThat()
                    .resideInAnyPackage(
                            "java..", PACKAGE + "display", PACKAGE + "quantity", "org.jspecify..");

    @ArchTest
    static final ArchRule sheetKnowsQuantityAndNoSubject =
            classes()
                    .that()
                    .resideInAPackage(PACKAGE + "sheet")
                    .should()
                    .onlyDependOnClassesThat()
                    .resideInAnyPackage(
                            "java..",
                            PACKAGE + "display",
                            PACKAGE + "quantity",
                            PACKAGE + "sheet",
                            "com.fasterxml.jackson.core..",
                            "org.jspecify..");

    @ArchTest
    static final ArchRule numericAndDataAreGround =
            classes()
                    .that()
                    .resideInAnyPackage(PACKAGE + "numeric", PACKAGE + "data")
                    .should()
                    .onlyDependOnClassesThat()
                    .resideInAnyPackage(
                            "java..",
                            PACKAGE + "numeric",
                            PACKAGE + "data",
                            PACKAGE + "quantity",
                            "org.apache.commons..",
                            "org.jspecify..")
                    .because("tables and solvers serve every subject and know none");

    @ArchTest
    static final ArchRule formStandsOnTheGroundAlone =
            classes()
                    .that()
                    .resideInAPackage(PACKAGE + "form")
                    .should()
                    .onlyDependOnClassesThat()
                    .resideInAnyPackage(
                            "java..",
                            PACKAGE + "form",
                            PACKAGE + "numeric",
                            PACKAGE + "data",
                            PACKAGE + "quantity",
                            PACKAGE + "display",
                            "org.apache.commons..",
                            "org.jspecify..");

    @ArchTest
    static final ArchRule steelStandsOnTheGroundAlone =
            classes()
                    .that()
                    .resideInAPackage(PACKAGE + "steel")
                    .should()
                    .onlyDependOnClassesThat()
                    .resideInAnyPackage(
                            "java..",
                            PACKAGE + "steel",
                            PACKAGE + "numeric",
                            PACKAGE + "data",
                            PACKAGE + "quantity",
                            PACKAGE + "display",
                            "org.apache.commons..",
                            "org.jspecify..");

    @ArchTest
    static final ArchRule cableStandsOnTheGroundAlone =
            classes()
                    .that()
                    .resideInAPackage(PACKAGE + "cable")
                    .should()
                    .onlyDependOnClassesThat()
                    .resideInAnyPackage(
                            "java..",
                            PACKAGE + "cable",
                            PACKAGE + "numeric",
                            "org.apache.commons..",
                            "org.jspecify..");

    @ArchTest
    static final ArchRule frameTakesItsSectionsFromSteel =
            classes()
                    .that()
                    .resideInAPackage(PACKAGE + "frame")
                    .should()
                    .onlyDependOnClassesThat()
                    .resideInAnyPackage(
                            "java..",
                            PACKAGE + "frame",
                            PACKAGE + "cable",
                            PACKAGE + "steel",
                            PACKAGE + "numeric",
                            PACKAGE + "data",
                            PACKAGE + "quantity",
                            PACKAGE + "display",
                            "org.apache.commons..",
                            "org.jspecify..");

    @ArchTest
    static final ArchRule archTakesFormAndFrame =
            classes()
                    .that()
                    .resideInAPackage(PACKAGE + "arch")
                    .should()
                    .onlyDependOnClassesThat()
                    .resideInAnyPackage(
                            "java..",
                            PACKAGE + "arch",
                            PACKAGE + "form",
                            PACKAGE + "train",
                            PACKAGE + "frame",
                            PACKAGE + "steel",
                            PACKAGE + "numeric",
                            PACKAGE + "data",
                            PACKAGE + "quantity",
                            PACKAGE + "display",
                            "org.apache.commons..",
                            "org.jspecify..");

    @ArchTest
    static final ArchRule actionsAndTrainsKnowTheFrameAlone =
            classes()
                    .that()
                    .resideInAnyPackage(PACKAGE + "action", PACKAGE + "train")
                    .should()
                    .onlyDependOnClassesThat()
                    .resideInAnyPackage(
                            "java..",
                            PACKAGE + "action",
                            PACKAGE + "train",
                            PACKAGE + "frame",
                            PACKAGE + "data",
                            PACKAGE + "quantity",
                            PACKAGE + "display",
                            "org.jspecify..")
                    .because("an action is the same whatever form it meets");

    @ArchTest
    static final ArchRule windStandsOnTheGroundAlone =
            classes()
                    .that()
                    .resideInAPackage(PACKAGE + "wind")
                    .should()
                    .onlyDependOnClassesThat()
                    .resideInAnyPackage(
                            "java..",
                            PACKAGE + "wind",
                            PACKAGE + "data",
                            PACKAGE + "quantity",
                            PACKAGE + "display",
                            "org.jspecify..");

    @ArchTest
    static final ArchRule mountainStandsOnTheGroundAlone =
            classes()
                    .that()
                    .resideInAnyPackage(
                            PACKAGE + "slope",
                            PACKAGE + "rock",
                            PACKAGE + "anchor",
                            PACKAGE + "foundation")
                    .should()
                    .onlyDependOnClassesThat()
                    .resideInAnyPackage(
                            "java..",
                            PACKAGE + "slope",
                            PACKAGE + "rock",
                            PACKAGE + "anchor",
                            PACKAGE + "foundation",
                            PACKAGE + "numeric",
                            PACKAGE + "data",
                            PACKAGE + "quantity",
                            PACKAGE + "display",
                            "org.apache.commons..",
                            "org.jspecify..");

    @ArchTest
    static final ArchRule subjectsKnowNoSheet =
            noClasses()
                    .that()
                    .resideOutsideOfPackages(
                            PACKAGE + "sheet",
                            PACKAGE + "study",
                            PACKAGE + "figure",
                            PACKAGE + "kernel..")
                    .should()
                    .dependOnClassesThat()
                    .resideInAPackage(PACKAGE + "sheet")
                    .because("a routine must be usable without a document around it");

    @ArchTest
    static final ArchRule lessonStandsOnQuantityAlone =
            classes()
                    .that()
                    .resideInAPackage(PACKAGE + "lesson")
                    .should()
                    .onlyDependOnClassesThat()
                    .resideInAnyPackage(
                            "java..",
                            PACKAGE + "lesson",
                            PACKAGE + "quantity",
                            PACKAGE + "display",
                            "com.fasterxml.jackson.core..",
                            "org.jspecify..")
                    .because("an exercise judges any formula, whatever the subject");

    @ArchTest
    static final ArchRule choiceTakesForm =
            classes()
                    .that()
                    .resideInAPackage(PACKAGE + "choice")
                    .should()
                    .onlyDependOnClassesThat()
                    .resideInAnyPackage(
                            "java..",
                            PACKAGE + "choice",
                            PACKAGE + "form",
                            PACKAGE + "quantity",
                            PACKAGE + "display",
                            "org.jspecify..");

    @ArchTest
    static final ArchRule studyKnowsQuantityAndSheetAndNoSubject =
            classes()
                    .that()
                    .resideInAPackage(PACKAGE + "study")
                    .should()
                    .onlyDependOnClassesThat()
                    .resideInAnyPackage(
                            "java..",
                            PACKAGE + "study",
                            PACKAGE + "sheet",
                            PACKAGE + "numeric",
                            PACKAGE + "quantity",
                            PACKAGE + "display",
                            "org.apache.commons..",
                            "org.jspecify..")
                    .because("it runs any graph again, whatever the subject");

    @ArchTest
    static final ArchRule onlyFiguresKnowStudy =
            noClasses()
                    .that()
                    .resideOutsideOfPackages(PACKAGE + "study", PACKAGE + "figure")
                    .should()
                    .dependOnClassesThat()
                    .resideInAPackage(PACKAGE + "study");

    @ArchTest
    static final ArchRule nothingHereSeesFiguresKernelOrDesk =
            noClasses()
                    .should()
                    .dependOnClassesThat()
                    .resideInAnyPackage(
                            PACKAGE + "figure..", PACKAGE + "kernel..", PACKAGE + "desk..")
                    .because("the core knows nothing of how its values are drawn or run");

    @ArchTest
    static final ArchRule theCoreNeedsNoWindowSystem =
            noClasses()
                    .should()
                    .dependOnClassesThat()
                    .resideInAnyPackage("java.awt..", "javax.swing..", "tech.tablesaw..")
                    .because("a machine without fonts or a screen must be able to calculate");
}
