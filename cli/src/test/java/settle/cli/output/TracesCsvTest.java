package settle.cli.output;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import settle.sim.recording.Trace;

class TracesCsvTest {

  private static CSVParser written() throws IOException {
    StringBuilder text = new StringBuilder();
    TracesCsv.write(OutcomeExample.skirtingAndLargerRadiator().runs(), text);
    return CSVParser.parse(
        text.toString(), CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get());
  }

  @Test
  void everyRecordedColumnOfEveryArrangementIsThereWithItsUnit() throws IOException {
    List<String> headings = written().getHeaderNames();
    assertThat(headings).hasSize(1 + 2 * Trace.columnCount(1, 1, 0));
    assertThat(headings)
        .contains(
            "time [h]",
            "skirting: outdoor [°C]",
            "skirting: living room: operative [°C]",
            "radiators: living room: emitter: mass flow [kg/s]",
            "radiators: living room: emitter: opening [-]");
    assertThat(headings).allMatch(h -> h.matches(".* \\[[^]]+]"));
  }

  @Test
  void linesFollowEachOtherAtEqualIntervals() throws IOException {
    assertThat(written().getRecords())
        .extracting(r -> r.get("time [h]"))
        .containsExactly("0.0000", "0.0167", "0.0333");
  }

  @Test
  void whatHasNoValueIsEmptyAndNothingIsMinusZero() throws IOException {
    List<CSVRecord> lines = written().getRecords();
    assertThat(lines)
        .extracting(r -> r.get("skirting: return [°C]"))
        .containsExactly("", "", "-0.004");
    assertThat(lines)
        .extracting(r -> r.get("skirting: outdoor [°C]"))
        .containsExactly("", "0.500", "0.250");
  }
}
