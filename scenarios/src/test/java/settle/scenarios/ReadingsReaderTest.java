package settle.scenarios;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import settle.scenarios.file.ScenarioFiles;
import settle.scenarios.readings.Readings;
import settle.scenarios.readings.Readings.Taken;
import settle.scenarios.readings.ReadingsReader;
import settle.sim.commissioning.Fault;
import settle.sim.commissioning.FaultKind;
import settle.sim.commissioning.Point;
import settle.sim.house.Arrangement;
import settle.sim.house.House;

/** Readings as people and their spreadsheets write them. */
class ReadingsReaderTest {

  private static final House HOUSE = house();
  private static final Arrangement SKIRTING = HOUSE.arrangements().get(0);

  private static House house() {
    try {
      return ScenarioFiles.read(Path.of("examples", "bungalow.yaml")).house();
    } catch (ScenarioException e) {
      throw new IllegalStateException(e);
    }
  }

  private static Readings read(String text) throws ScenarioException {
    return ReadingsReader.read(text, "readings.csv", HOUSE, SKIRTING);
  }

  private static double value(Readings readings, Point.Kind kind, int which) {
    return readings.taken().stream()
        .filter(t -> t.kind() == kind && t.which() == which)
        .mapToDouble(Taken::value)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void semicolonsAndDecimalCommasAreRead() throws ScenarioException {
    Readings readings =
        read(
            "Raum;Room;Return;Far end;Air;Minutes\n;Kitchen;38,5;38,9;16,2;55\n;source flow;46,4\n");
    assertThat(value(readings, Point.Kind.RETURN, 1)).isEqualTo(38.5);
    assertThat(value(readings, Point.Kind.FAR_END, 1)).isEqualTo(38.9);
    assertThat(value(readings, Point.Kind.AIR, HOUSE.roomIndex("kitchen"))).isEqualTo(16.2);
    assertThat(value(readings, Point.Kind.FLOW, 0)).isEqualTo(46.4);
    assertThat(readings.taken().get(0).after()).isEqualTo(OptionalDouble.of(3300));
    assertThat(readings.doubts())
        .singleElement()
        .satisfies(d -> assertThat(d.message()).contains("Raum"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "room,return °F\nkitchen,101.3\n",
        "room,return (F)\nkitchen,101.3\n",
        "room,return\nkitchen,101.3 °F\n",
        "room,return °F\nkitchen,38.5 °C\n",
        "room\treturn\r\nKITCHEN\t38.5\r\n",
        "\"room\",\"return [°C]\"\n\"kitchen\",\"38,5\"\n",
        "where,Return pipe (°C)\nkitchen, 38.5 C\n"
      })
  void unitsStandInHeadingsOrCells(String text) throws ScenarioException {
    assertThat(value(read(text), Point.Kind.RETURN, 1)).isCloseTo(38.5, within(1e-9));
  }

  @Test
  void whatWasNotReadIsLeftOut() throws ScenarioException {
    Readings readings = read("room,return,far end,air\nkitchen,-,n/a,16\nhall,,,\n");
    assertThat(readings.taken()).hasSize(1);
  }

  @Test
  void theDayAndTheHouseMayStandInRowsOrColumns() throws ScenarioException {
    Readings rows =
        read("room,return,found\noutdoor,-2\nstart,11\nkitchen,38\npump,,low\nsource,46,right\n");
    assertThat(rows.outdoor()).hasValue(-2);
    assertThat(rows.start()).hasValue(11);
    assertThat(value(rows, Point.Kind.FLOW, 0)).isEqualTo(46);
    assertThat(rows.looks().seen(new Fault(FaultKind.PUMP_LOW, Fault.HOUSE))).isTrue();
    assertThat(rows.looks().excluded(new Fault(FaultKind.PUMP_HIGH, Fault.HOUSE))).isTrue();
    assertThat(rows.looks().excluded(new Fault(FaultKind.SOURCE_COLD, Fault.HOUSE))).isTrue();
    Readings columns = read("room,return,outdoor,start,flow\nkitchen,38,-2,11,46\nhall,36,,,\n");
    assertThat(columns.outdoor()).hasValue(-2);
    assertThat(value(columns, Point.Kind.FLOW, 0)).isEqualTo(46);
  }

  @Test
  void whatWasFoundIsTaken() throws ScenarioException {
    Readings readings =
        read("room,return,found\nkitchen,38,Lockshield open\nhall,36,OK\nstudy,35,\n");
    assertThat(readings.looks().seen(new Fault(FaultKind.LOCKSHIELD_OPEN, 1))).isTrue();
    assertThat(readings.looks().excluded(new Fault(FaultKind.AIR, 1))).isTrue();
    assertThat(readings.looks().excluded(new Fault(FaultKind.AIR, 2))).isTrue();
    assertThat(readings.looks().isLookedAt(new Fault(FaultKind.AIR, 3))).isFalse();
  }

  @Test
  void everyMistakeIsFoundInOnePass() {
    String text =
        "room,return,air,minutes\nkitchn,38,,\nhall,36x,16,5\nhall,,17,\n,40,,\nstudy,300,,\n";
    assertThatThrownBy(() -> read(text))
        .isInstanceOfSatisfying(
            ScenarioException.class,
            e ->
                assertThat(e.problems().stream().map(Object::toString).toList())
                    .isEqualTo(
                        List.of(
                            "readings.csv:2:1: no room or emitter is called 'kitchn'; the nearest is 'kitchen'",
                            "readings.csv:3:6: found '36x', expected a temperature",
                            "readings.csv:3:13: found '5', expected minutes from 20 to 240",
                            "readings.csv:4:7: the air of hall again, and other than in line 3",
                            "readings.csv:5:1: a row without a room",
                            "readings.csv:6:7: found '300', expected a temperature from −40 to 110 °C")));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "\"room,return\nkitchen,38",
        ",,,\n,,,",
        ";",
        "room\n",
        "\"\"\"",
        "room,room\nkitchen,hall",
        "return\n38"
      })
  void whatIsNoTableIsRefusedAndNotReadOn(String text) {
    assertThatThrownBy(() -> read(text)).isInstanceOf(ScenarioException.class);
  }
}
