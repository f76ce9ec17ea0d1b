package settle.sim.source;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What grows with a source and what stays, what it can give, and what no source can be. */
class SourceSizesTest {

  private static BoilerEfficiency efficiency() {
    return new BoilerEfficiency(
        new double[] {30, 55},
        new double[] {0.2, 1},
        new double[][] {{0.98, 0.96}, {0.9, 0.88}},
        55);
  }

  private static Boiler boiler(double least, double most) {
    return new Boiler("boiler", most, least, 60, 5, 20_000, 60, 180, 120, 2, efficiency());
  }

  @Test
  void aLargerBoilerIsLargerThroughoutAndModulatesAsFar() {
    Boiler larger = boiler(4000, 16_000).scaled(1.5);
    assertThat(larger.maximumPower(-10, 70)).isEqualTo(24_000);
    assertThat(larger.minimumPower()).isEqualTo(6000);
    assertThat(larger.thermalMass()).isEqualTo(30_000);
    assertThat(larger.setTo(60).scaled(1 / 1.5).maximumPower()).isCloseTo(16_000, within(1e-9));
    assertThat(larger.flowSetPoint()).isEqualTo(60);
    assertThat(larger.highestFlow()).isInfinite();
  }

  @Test
  void anotherFlowTemperatureChangesNothingElse() {
    Boiler boiler = boiler(4000, 16_000);
    assertThat(boiler.setTo(45).flowSetPoint()).isEqualTo(45);
    assertThat(boiler.setTo(45).setTo(60)).isEqualTo(boiler);
    HeatPump pump = new SamplePump().build();
    assertThat(pump.setTo(45).flowSetPoint()).isEqualTo(45);
    assertThat(pump.setTo(45).setTo(35)).isEqualTo(pump);
    IdealSource ideal = new IdealSource("ideal", 60, 9000);
    assertThat(ideal.setTo(45).flowSetPoint()).isEqualTo(45);
    assertThat(ideal.setTo(45).setTo(60)).isEqualTo(ideal);
  }

  @Test
  void aLargerIdealSourceGivesMore() {
    IdealSource ideal = new IdealSource("ideal", 60, 9000).scaled(1.5);
    assertThat(ideal.maximumPower(-10, 60)).isEqualTo(13_500);
    assertThat(ideal.highestFlow()).isInfinite();
    assertThat(ideal.overRunTime()).isZero();
    assertThatThrownBy(() -> new IdealSource("ideal", 60, 0))
        .isInstanceOf(IllegalArgumentException.class);
  }

  /** Its electric heater is a part that is bought apart. */
  @Test
  void aLargerHeatPumpIsLargerButForItsElectricHeater() {
    SamplePump sample = new SamplePump();
    sample.minimumFlow = 0.1;
    sample.defrost = Optional.of(new Defrost(-10, 5, 2400, 200, 3000, 500));
    sample.backup = Optional.of(new BackupHeater(6000, -5));
    HeatPump larger = sample.build().scaled(1.5);
    assertThat(larger.maximumPower(0, 35)).isEqualTo(12_000);
    assertThat(larger.maximumPower(-5, 35)).isEqualTo(18_000);
    assertThat(larger.minimumPower(0, 35)).isEqualTo(3000);
    assertThat(larger.performance().cop(0, 35)).isEqualTo(SamplePump.COP);
    assertThat(larger.minimumFlow()).isCloseTo(0.15, within(1e-12));
    assertThat(larger.thermalMass()).isEqualTo(90_000);
    assertThat(larger.defrost()).contains(new Defrost(-10, 5, 2400, 200, 4500, 750));
    assertThat(larger.backup()).isEqualTo(sample.backup);
  }

  @ParameterizedTest
  @CsvSource({"0, 16000", "8000, 7999"})
  void noBoilerWithoutALeastOutputBelowItsLargest(double least, double most) {
    assertThatThrownBy(() -> boiler(least, most))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("'boiler'");
  }

  @ParameterizedTest
  @CsvSource({
    "0, 20000, 60, 180, 120, 2, band",
    "5, 0, 60, 180, 120, 2, mass",
    "5, 20000, 0, 180, 120, 2, control",
    "5, 20000, 60, -1, 120, 2, times",
    "5, 20000, 60, 180, -1, 2, times",
    "5, 20000, 60, 180, 120, -1, loss"
  })
  void noBoilerBeyondWhatBoilersAre(
      double band,
      double mass,
      double control,
      double antiCycle,
      double overRun,
      double loss,
      String what) {
    assertThatThrownBy(
            () ->
                new Boiler(
                    "boiler",
                    9000,
                    3000,
                    60,
                    band,
                    mass,
                    control,
                    antiCycle,
                    overRun,
                    loss,
                    efficiency()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining(what);
  }

  @Test
  void aBoilerOfOnePowerWithoutLossOrRestIsOne() {
    Boiler boiler = new Boiler("boiler", 9000, 9000, 60, 5, 20_000, 60, 0, 0, 0, efficiency());
    assertThat(boiler.maximumPower()).isEqualTo(boiler.minimumPower());
  }

  private static void refused(String what, Consumer<SamplePump> change) {
    SamplePump sample = new SamplePump();
    change.accept(sample);
    assertThatThrownBy(sample::build)
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining(what)
        .hasMessageContaining("'sample'");
  }

  @Test
  void noHeatPumpBeyondWhatHeatPumpsAre() {
    refused("modulation", pump -> pump.modulation = 0);
    refused("modulation", pump -> pump.modulation = 1.01);
    refused("band", pump -> pump.band = 0);
    refused("flow", pump -> pump.minimumFlow = -0.1);
    refused("running time", pump -> pump.onTime = -1);
    refused("rest", pump -> pump.offTime = -1);
    refused("mass", pump -> pump.mass = 0);
    refused("standby", pump -> pump.standby = -1);
    refused("highest flow", pump -> pump.highestFlow = 34.9);
    SamplePump sample = new SamplePump();
    sample.highestFlow = 35;
    assertThat(sample.build().highestFlow()).isEqualTo(35);
  }

  @Test
  void theBackupHeaterHelpsInTheColdUpToItsLimit() {
    BackupHeater heater = new BackupHeater(3000, -2);
    assertThat(heater.availableAt(-2)).isEqualTo(3000);
    assertThat(heater.availableAt(-1.99)).isZero();
    assertThatThrownBy(() -> new BackupHeater(0, -2)).isInstanceOf(IllegalArgumentException.class);
  }

  /** 40 min of 6 kW, then 4 min that take 3 kW: 14 400 - 720 kJ in 44 min, 5.18 kW. */
  @Test
  void aDefrostLessensTheMeanHeat() {
    Defrost defrost = new Defrost(-10, 5, 2400, 240, 3000, 500);
    assertThat(defrost.meanHeat(6000)).isCloseTo((14_400e3 - 720e3) / 2640, within(1e-9));
    assertThat(defrost.powerFor(defrost.meanHeat(6000))).isCloseTo(6000, within(1e-9));
    // 1.5 kW while running, 0.5 kW while it defrosts.
    assertThat(defrost.meanInput(1500)).isCloseTo((3600e3 + 120e3) / 2640, within(1e-9));
  }

  @Test
  void iceFormsWithinItsRangeOnly() {
    Defrost defrost = new Defrost(-10, 5, 2400, 240, 3000, 500);
    assertThat(defrost.icesAt(-10.01)).isFalse();
    assertThat(defrost.icesAt(-10)).isTrue();
    assertThat(defrost.icesAt(5)).isTrue();
    assertThat(defrost.icesAt(5.01)).isFalse();
  }

  @ParameterizedTest
  @CsvSource({
    "5, 5, 2400, 240, 3000, 500, range",
    "-10, 5, 0, 240, 3000, 500, running",
    "-10, 5, 2400, 0, 3000, 500, duration",
    "-10, 5, 2400, 240, -1, 500, heat",
    "-10, 5, 2400, 240, 3000, -1, electricity"
  })
  void noDefrostWithoutTimeOrOfNegativeHeat(
      double low, double high, double run, double time, double heat, double input, String what) {
    assertThatThrownBy(() -> new Defrost(low, high, run, time, heat, input))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining(what);
  }

  @ParameterizedTest
  @CsvSource({"0, 0, 20", "0.1, -1, 20", "0.1, 2, -51", "0.1, 2, 61"})
  void noVesselWithoutWaterOrOfNegativeLoss(double volume, double loss, double surroundings) {
    assertThatThrownBy(() -> new Buffer(Buffer.Placement.FLOW, volume, loss, surroundings, 0))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void onlyAParallelVesselNeedsAPumpOfItsOwn() {
    assertThat(new Buffer(Buffer.Placement.RETURN, 0.1, 0, 20, 0).sourceFlow()).isZero();
    assertThatThrownBy(() -> new Buffer(Buffer.Placement.PARALLEL, 0.1, 0, 20, 0))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
