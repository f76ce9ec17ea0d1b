package settle.cli;

import static com.tngtech.archunit.core.domain.JavaAccess.Predicates.target;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.name;
import static com.tngtech.archunit.core.domain.properties.HasOwner.Predicates.With.owner;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** The direction of dependencies between the modules, and what the physics may not touch. */
@AnalyzeClasses(packages = "settle", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

  private static final String SIM = "settle.sim..";

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

  /** Studies may be handed an executor; what happens inside a run is one thread's work. */
  @ArchTest
  static final ArchRule simRunsInOneThread =
      noClasses()
          .that()
          .resideInAPackage(SIM)
          .and()
          .resideOutsideOfPackage("settle.sim.study..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("java.util.concurrent..")
          .orShould()
          .dependOnClassesThat()
          .areAssignableTo(Thread.class);

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
