package settle.cli;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import settle.sim.emitter.Emitter;
import settle.sim.source.Source;
import settle.sim.valve.Valve;

/**
 * A kind of emitter, valve or source answers for itself: nothing else in the physics knows which
 * kinds there are, so that a further one is added without a change elsewhere.
 */
@AnalyzeClasses(packages = "settle.sim", importOptions = ImportOption.DoNotIncludeTests.class)
class KindsKnowThemselvesTest {

  /**
   * A valve held still for a step test; an ideal source to settle rooms without a real one's
   * limits.
   */
  private static final String MAKE_ONE =
      "settle\\.sim\\.(tuning\\.StartValues|study\\.SeasonAtRest)";

  /** What is told of a boiler or a heat pump alone. */
  private static final String ANSWER_FOR_ONE =
      "settle\\.sim\\.study\\.(BoilerAnswer|HeatPumpAnswer)(\\$.*)?";

  @ArchTest static final ArchRule emitters = onlyItsPackageKnows(Emitter.class);

  @ArchTest static final ArchRule valves = onlyItsPackageKnows(Valve.class);

  @ArchTest static final ArchRule sources = onlyItsPackageKnows(Source.class);

  private static ArchRule onlyItsPackageKnows(Class<?> kind) {
    return noClasses()
        .that()
        .resideOutsideOfPackage(kind.getPackageName())
        .and()
        .haveNameNotMatching(MAKE_ONE)
        .and()
        .haveNameNotMatching(ANSWER_FOR_ONE)
        .should()
        .dependOnClassesThat(
            describe(
                "are a kind of " + kind.getSimpleName(),
                (JavaClass c) -> c.isAssignableTo(kind) && !c.isEquivalentTo(kind)));
  }
}
