package settle.plots.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class AxisTest {

  @Test
  void roundNumbersTakeInTheValues() {
    Axis axis = Axis.round(0, 8.3, 5, "kW");
    assertThat(axis.min()).isZero();
    assertThat(axis.max()).isEqualTo(10);
    assertThat(labels(axis)).containsExactly("0", "2", "4", "6", "8", "10");
  }

  @Test
  void anExactAxisEndsWhereItIsTold() {
    Axis axis = Axis.exact(0, 11.2, 6, "m");
    assertThat(axis.max()).isEqualTo(11.2);
    assertThat(labels(axis)).containsExactly("0", "2", "4", "6", "8", "10");
  }

  @Test
  void smallStepsKeepTheirDecimals() {
    assertThat(labels(Axis.exact(0, 1, 5, "kW")))
        .containsExactly("0.0", "0.2", "0.4", "0.6", "0.8", "1.0");
  }

  @Test
  void whatHardlyMovesIsNotBlownUp() {
    Axis axis = Axis.padded(55, 55.1, 10, 5, "°C");
    assertThat(axis.max() - axis.min()).isEqualTo(10, org.assertj.core.data.Offset.offset(1e-9));
  }

  @Test
  void anEmptyAxisIsRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> new Axis(1, 1, List.of(), "°C"));
  }

  @Test
  void daysBeginAtMidnight() {
    Axis axis = Axis.time(0, 48, Optional.empty()).at(880);
    assertThat(labels(axis)).contains("0:00", "6:00", "12:00", "18:00");
    assertThat(axis.ticks().stream().filter(AxisTest::isStrong).map(Tick::value))
        .containsExactly(0.0, 24.0, 48.0);
    assertThat(axis.ticks().stream().map(Tick::note).filter(n -> !n.isEmpty()))
        .containsExactly("day 1", "day 2", "day 3");
    assertThat(axis.caption()).contains("h:min");
  }

  @Test
  void aSeasonIsCountedInDays() {
    Axis axis = Axis.time(0, 212 * 24, Optional.empty()).at(880);
    assertThat(labels(axis)).allMatch(l -> l.startsWith("day "));
    assertThat(axis.ticks()).hasSizeBetween(5, 16);
  }

  @Test
  void aSeasonOfKnownDaysHasItsMonths() {
    Axis axis = Axis.time(0, 212 * 24, Optional.of(LocalDate.of(2010, 10, 1))).at(880);
    assertThat(labels(axis))
        .containsExactly("Oct", "Nov", "Dec", "Jan", "Feb", "Mar", "Apr", "May");
    assertThat(axis.ticks().get(1).value()).isEqualTo(31 * 24);
    assertThat(axis.ticks().stream().filter(AxisTest::isStrong).map(Tick::label))
        .containsExactly("Jan");
    Axis within = Axis.time(0, 212 * 24, Optional.of(LocalDate.of(2010, 9, 20))).at(150);
    assertThat(labels(within)).containsExactly("Oct", "", "Dec", "", "Feb", "", "Apr");
    assertThat(within.ticks().get(0).value()).isEqualTo(11 * 24);
    assertThat(Axis.time(0, 48, Optional.of(LocalDate.of(2010, 10, 1))).at(880))
        .isEqualTo(Axis.time(0, 48, Optional.empty()).at(880));
  }

  @Test
  void timeSinceACallBeginsAtZero() {
    Axis axis = Axis.since(0, 3, "time since the first call").at(400);
    assertThat(axis.ticks().get(0).label()).isEqualTo("0:00");
    assertThat(axis.max()).isEqualTo(3);
  }

  private static boolean isStrong(Tick tick) {
    return tick.kind() == Tick.Kind.STRONG;
  }

  private static List<String> labels(Axis axis) {
    return axis.ticks().stream().map(Tick::label).toList();
  }
}
