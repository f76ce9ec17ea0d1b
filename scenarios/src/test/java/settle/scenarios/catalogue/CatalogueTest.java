package settle.scenarios.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import settle.scenarios.definition.DefinitionSection;
import settle.scenarios.definition.Definitions;
import settle.scenarios.document.Node;
import settle.scenarios.document.Position;
import settle.scenarios.document.YamlDocument;
import settle.scenarios.emitter.EmitterKinds;
import settle.scenarios.emitter.PanelType;
import settle.scenarios.emitter.PerimeterType;
import settle.scenarios.fabric.MakeUp;
import settle.scenarios.format.Findings;
import settle.scenarios.format.Key;
import settle.scenarios.format.Section;
import settle.scenarios.format.Table;
import settle.scenarios.format.Value;
import settle.scenarios.house.ScenarioFormat;
import settle.scenarios.pipes.PipeType;
import settle.scenarios.source.BoilerType;
import settle.scenarios.source.HeatPumpType;
import settle.sim.emitter.PlainPlate;
import settle.sim.fabric.Behind;
import settle.sim.fabric.Facing;
import settle.sim.hydraulics.LockshieldScale;
import settle.sim.source.BoilerEfficiency;
import settle.sim.source.PerformanceMap;
import settle.sim.valve.KnobScale;

class CatalogueTest {

  private static final Definitions CATALOGUE = Catalogue.builtIn();

  /**
   * U-values worked by hand from the layers and ISO 6946:2017 Table 7. The model carries
   * coefficients (7.63 W/m2K) where the standard rounds resistances (0.13 m2K/W): half a per cent.
   */
  @ParameterizedTest
  @CsvSource({
    "solid brick wall, WALL, 2.119",
    "cavity wall 100 mm insulation, WALL, 0.3031",
    "cavity wall unfilled, WALL, 1.456",
    "loft ceiling 100 mm, CEILING, 0.3145",
    "suspended timber floor, FLOOR, 2.729",
  })
  void uValuesFollowFromTheLayers(String name, Facing facing, double expected) {
    assertThat(
            CATALOGUE
                .of(MakeUp.SECTION)
                .get(name)
                .construction(facing, Behind.OUTDOORS)
                .uValue(facing))
        .isCloseTo(expected, within(0.006 * expected));
  }

  /** What is read piece by piece when it is asked for is what the files say as a whole. */
  @Test
  void theFilesAreCutWhereTheyShould() throws Exception {
    List<DefinitionSection<?>> sections = ScenarioFormat.BUILT_IN.sections();
    Table table = Table.of("definitions", sections.stream().map(s -> s.key()).toArray(Key[]::new));
    Definitions whole = new Definitions(sections);
    for (String file : Catalogue.FILES) {
      Findings findings = new Findings(file);
      Node text = YamlDocument.parse(Catalogue.resource(file));
      Section section = new Value("", text, Position.START, findings).section(table);
      whole = Definitions.read(section, sections, whole);
      assertThat(findings.problems()).isEmpty();
      assertThat(findings.warnings()).isEmpty();
    }
    for (DefinitionSection<?> section : sections) {
      assertThat(CATALOGUE.of(section)).as(section.name()).isNotEmpty();
      // Efficiency tables are arrays, which records compare by identity.
      assertThat(List.<Object>copyOf(CATALOGUE.of(section).values()))
          .usingRecursiveComparison()
          .isEqualTo(List.copyOf(whole.of(section).values()));
    }
  }

  @Test
  void thereAreEnoughConstructionsAndAllAreLayered() {
    assertThat(CATALOGUE.of(MakeUp.SECTION).values())
        .hasSizeGreaterThanOrEqualTo(12)
        .allSatisfy(c -> assertThat(c).isInstanceOf(MakeUp.Layered.class));
  }

  @Test
  void everythingSaysWhatItIsAndWhereItsFiguresComeFrom() {
    assertThat(new CatalogueListing(CATALOGUE).entries())
        .hasSizeGreaterThan(70)
        .allSatisfy(
            e -> {
              assertThat(e.about()).as(e.name()).isNotBlank();
              assertThat(e.facts()).as(e.name()).isNotBlank();
              assertThat(e.source()).as(e.name()).isNotBlank();
            });
  }

  /**
   * Every skirting gives more than a plain face of its height, and at most twice that: the rest
   * must come from behind it.
   */
  @Test
  void skirtingIsPlausibleAgainstAPlainPlate() {
    List<PerimeterType> skirtings =
        CATALOGUE.of(EmitterKinds.SECTION).values().stream()
            .filter(PerimeterType.class::isInstance)
            .map(PerimeterType.class::cast)
            .toList();
    assertThat(skirtings).hasSizeGreaterThanOrEqualTo(3);
    for (PerimeterType s : skirtings) {
      double plate = PlainPlate.outputPerMetre(s.faceHeight(), 0.9, 70, 20);
      assertThat(s.outputPerMetre() / plate).as(s.described().name()).isBetween(1.1, 2.5);
      double radiation = PlainPlate.radiation(0.9, 70, 20) * s.faceHeight();
      assertThat(s.law().radiantFraction() * s.outputPerMetre())
          .as("radiation of " + s.described().name())
          .isCloseTo(radiation, within(0.1 * radiation));
      assertThat(s.upperConnection()).isLessThan(s.faceHeight()).isGreaterThan(s.lowerConnection());
    }
  }

  /**
   * Taller and deeper panels of one kind give more; two panels hold about twice the water of one.
   */
  @Test
  void radiatorsRiseWithTypeAndHeight() {
    List<String> types = List.of("10", "11", "21", "22");
    List<Integer> heights = List.of(300, 450, 600);
    for (int h = 0; h < heights.size(); h++) {
      for (int t = 0; t < types.size(); t++) {
        PanelType panel = panel(types.get(t), heights.get(h));
        if (t > 0) {
          assertThat(panel.outputPerMetre())
              .isGreaterThan(panel(types.get(t - 1), heights.get(h)).outputPerMetre());
        }
        if (h > 0) {
          assertThat(panel.outputPerMetre())
              .isGreaterThan(panel(types.get(t), heights.get(h - 1)).outputPerMetre());
        }
        assertThat(panel.law().exponent()).isBetween(1.25, 1.35);
      }
      assertThat(
              panel("22", heights.get(h)).waterPerMetre()
                  / panel("11", heights.get(h)).waterPerMetre())
          .isBetween(1.8, 2.2);
    }
  }

  private static PanelType panel(String type, int height) {
    return (PanelType)
        CATALOGUE.of(EmitterKinds.SECTION).get("type " + type + " " + height + " mm");
  }

  /**
   * Bores: outside diameter less two walls, EN 1057 (sizes checked against a leaflet that reprints
   * its matrix).
   */
  @ParameterizedTest
  @CsvSource({"8, 0.6", "10, 0.6", "15, 0.7", "22, 0.9", "28, 0.9", "35, 1.2"})
  void copperPipesAreThoseOfEn1057(int outside, double wall) {
    assertThat(CATALOGUE.of(PipeType.SECTION).get(outside + " mm copper").bore())
        .isCloseTo((outside - 2 * wall) / 1000, within(1e-9));
  }

  /**
   * Upper bound of gross efficiency: methane, 20 % excess air, flue saturated at the return
   * temperature, no case loss, 25 °C reference; computed from the combustion equation. A boiler's
   * table must lie under it.
   */
  @ParameterizedTest
  @CsvSource({"30, 0.976", "40, 0.954", "50, 0.918", "60, 0.886", "80, 0.878"})
  void boilersLieUnderTheBoundOfCombustion(double returnTemperature, double bound) {
    for (BoilerType boiler : CATALOGUE.of(BoilerType.SECTION).values()) {
      BoilerEfficiency efficiency = boiler.pattern().efficiency();
      for (double load : new double[] {0.2, 0.5, 1}) {
        assertThat(efficiency.at(returnTemperature, load))
            .as(boiler.described().name())
            .isLessThan(bound);
      }
    }
  }

  /** Seen in print: six to nine points more at 30 than at 55 °C return. */
  @Test
  void condensingPays() {
    BoilerEfficiency e =
        CATALOGUE.of(BoilerType.SECTION).get("condensing boiler 12 kW").pattern().efficiency();
    for (double load : new double[] {0.2, 1}) {
      assertThat(e.at(30, load) - e.at(55, load)).isBetween(0.06, 0.09);
    }
  }

  /**
   * Share of Carnot's COP that a heat pump reaches: 0.4 to 0.5 about its best point (common
   * practice, no source), less in the cold, where frost and the lift take their part, and at small
   * lifts.
   */
  @Test
  void heatPumpsReachABelievableShareOfCarnot() {
    assertThat(CATALOGUE.of(HeatPumpType.SECTION)).hasSizeGreaterThanOrEqualTo(3);
    for (HeatPumpType type : CATALOGUE.of(HeatPumpType.SECTION).values()) {
      PerformanceMap map = (PerformanceMap) type.pattern().performance();
      for (double outdoor : map.outdoors()) {
        for (double flow : map.flows()) {
          if (flow - outdoor < 15) {
            continue;
          }
          double carnot = (flow + 273.15) / (flow - outdoor);
          assertThat(map.cop(outdoor, flow) / carnot)
              .as(type.described().name() + " at " + outdoor + "/" + flow)
              .isBetween(0.3, 0.45);
        }
      }
      assertThat(map.cop(7, 35) / (308.15 / 28)).isBetween(0.4, 0.45);
      assertThat(map.capacity(-7, 35) / map.capacity(7, 35)).isBetween(0.7, 0.9);
      assertThat(map.capacity(7, 55)).isLessThan(map.capacity(7, 35));
    }
  }

  @Test
  void scalesOfKnobAndLockshield() {
    assertThat(KnobScale.set(0)).isEqualTo(7);
    assertThat(KnobScale.set(3)).isEqualTo(20);
    assertThat(KnobScale.set(3.5)).isEqualTo(22);
    assertThat(KnobScale.set(5)).isEqualTo(28);
    for (double turns = 0; turns <= 4; turns += 0.125) {
      double kv = LockshieldScale.TYPICAL.atTurns(turns).kv();
      assertThat(LockshieldScale.TYPICAL.atKv(kv).turns()).isCloseTo(turns, within(1e-12));
    }
    assertThat(LockshieldScale.TYPICAL.atTurns(9).kv()).isEqualTo(1.3);
  }
}
