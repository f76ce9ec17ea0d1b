package settle.cli;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaAccess.Predicates.target;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.assignableTo;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackage;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.name;
import static com.tngtech.archunit.core.domain.properties.HasOwner.Predicates.With.owner;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.io.File;
import java.util.Collection;
import java.util.stream.BaseStream;

/** The direction of dependencies between the modules, and what the physics may not touch. */
@AnalyzeClasses(packages = "settle", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

  private static final String SIM = "settle.sim..";

  /**
   * What runs in a browser too: physics, format, figures, words, pictures; neither files nor
   * pixels.
   */
  private static final DescribedPredicate<JavaClass> RUN_ANYWHERE =
      resideInAnyPackage(
              SIM,
              "settle.scenarios..",
              "settle.plots.figures..",
              "settle.plots.words..",
              "settle.plots.chart..",
              "settle.plots.drawing..",
              "settle.plots.gallery..")
          .and(resideOutsideOfPackage("settle.scenarios.file.."))
          .as("run anywhere");

  /** The physics stands on the Java language and Commons Math, so that it can run anywhere. */
  @ArchTest
  static final ArchRule simKnowsOnlyCommonsMath =
      classes()
          .that()
          .resideInAPackage(SIM)
          .should()
          .onlyDependOnClassesThat()
          .resideInAnyPackage(SIM, "java..", "org.apache.commons.math3..");

  @ArchTest
  static final ArchRule scenariosKnowNeitherPlotsNorCommands =
      noClasses()
          .that()
          .resideInAPackage("settle.scenarios..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("settle.plots..", "settle.cli..");

  @ArchTest
  static final ArchRule plotsKnowNeitherScenariosNorCommands =
      noClasses()
          .that()
          .resideInAPackage("settle.plots..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("settle.scenarios..", "settle.cli..");

  @ArchTest
  static final ArchRule onlyCommandsKnowTheCommandLine =
      noClasses()
          .that()
          .resideOutsideOfPackage("settle.cli..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("picocli..");

  @ArchTest
  static final ArchRule simReadsAndWritesNothing =
      noClasses()
          .that()
          .resideInAPackage(SIM)
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("java.io..", "java.nio..", "java.net..", "java.util.logging..");

  /** A result may depend on what went in, never on when or how fast it was computed. */
  @ArchTest
  static final ArchRule simReadsNoClock =
      noClasses()
          .that()
          .resideInAPackage(SIM)
          .should()
          .callMethod(System.class, "currentTimeMillis")
          .orShould()
          .callMethod(System.class, "nanoTime")
          .orShould()
          .callMethodWhere(target(name("now")).and(target(owner(resideInAPackage("java.time..")))));

  @ArchTest
  static final ArchRule simUsesNoReflection =
      noClasses()
          .that()
          .resideInAPackage(SIM)
          .should()
          .dependOnClassesThat()
          .resideInAPackage("java.lang.reflect..")
          .orShould()
          .callMethod(Class.class, "forName", String.class)
          .orShould()
          .callMethod(Class.class, "getResourceAsStream", String.class);

  /**
   * What a page in the browser needs runs where there are neither files nor a screen of Java's. The
   * sim, the format but for its files, and the words are compiled to JavaScript; charts and
   * drawings can be.
   */
  @ArchTest
  static final ArchRule whatRunsAnywhereKnowsNoFilesNorScreens =
      noClasses()
          .that(RUN_ANYWHERE)
          .should()
          .dependOnClassesThat(
              resideInAnyPackage(
                      "java.nio.file..",
                      "java.nio.channels..",
                      "java.awt..",
                      "javax..",
                      "java.net..",
                      "java.lang.reflect..")
                  .or(assignableTo(File.class)))
          .because("the same figures must come out in a browser");

  /**
   * Studies are handed the workers who carry out what does not depend on each other; nobody starts
   * a thread, waits for one or asks for a parallel stream. Numbers that several may count on are
   * all that is left.
   */
  @ArchTest
  static final ArchRule whatRunsAnywhereStartsNoThread =
      noClasses()
          .that(RUN_ANYWHERE)
          .should()
          .dependOnClassesThat(
              resideInAnyPackage("java.util.concurrent..")
                  .and(not(resideInAnyPackage("java.util.concurrent.atomic..")))
                  .or(assignableTo(Thread.class)))
          .orShould()
          .callMethodWhere(
              target(name("parallel")).and(target(owner(assignableTo(BaseStream.class)))))
          .orShould()
          .callMethodWhere(
              target(name("parallelStream")).and(target(owner(assignableTo(Collection.class)))))
          .because("how many work at a time is decided outside");

  /**
   * Text is made where a step ends its run by an exception, and nowhere else in it. A method that
   * throws could still make other text; the test that counts what a step allocates would see that.
   */
  @ArchTest
  static void theStepFormatsNoText(JavaClasses classes) {
    StepReach reach = new StepReach(classes);
    assertThat(reach.makingTextForNoException()).isEmpty();
    // Seen to see: the stages are followed into every kind, and text for exceptions is found.
    assertThat(reach.codeUnits())
        .extracting(u -> u.getOwner().getSimpleName())
        .contains("PlugFlow", "NetworkFlow", "HeatPumpStepper", "WaxDrive", "RoomStepper", "Trace");
    assertThat(reach.makingText())
        .extracting(JavaCodeUnit::getFullName)
        .contains("settle.sim.engine.HouseRun.check()");
  }

  @ArchTest
  static final ArchRule simPackagesFormNoCycle =
      slices().matching("settle.sim.(*)..").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule plotsPackagesFormNoCycle =
      slices().matching("settle.plots.(*)..").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule nobodyPrintsBehindTheCommandsBack =
      noClasses()
          .that()
          .doNotHaveFullyQualifiedName("settle.cli.Main")
          .should()
          .accessField(System.class, "out")
          .orShould()
          .accessField(System.class, "err")
          .as("only Main may touch the process's own streams")
          .because("output goes through the command line's writers, so that --json stays clean");

  /** Parameters are records and states are owned: a static that can change belongs to neither. */
  @ArchTest
  static final ArchRule simHoldsNoChangingStatics =
      fields()
          .that()
          .areStatic()
          .and()
          .areDeclaredInClassesThat()
          .resideInAPackage(SIM)
          .should()
          .haveModifier(JavaModifier.FINAL);
}
