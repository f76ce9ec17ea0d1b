package settle.cli.output;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Scripts rely on every name and unit in this document. */
class OutcomeJsonTest {

  @Test
  void theDocumentHasTheStableNames() {
    String json =
        JsonDocument.write(
            "compare",
            "house.yaml",
            "1.2.3",
            OutcomeExample.skirtingAndLargerRadiator().study()::write);
    assertThat(json)
        .isEqualTo(
            """
            {
              "tool" : "settle",
              "version" : "1.2.3",
              "command" : "compare",
              "scenario" : "house.yaml",
              "stepSeconds" : 10.0,
              "arrangements" : [ {
                "name" : "skirting",
                "emitterKind" : "perimeter",
                "keepsUp" : true,
                "rooms" : [ {
                  "name" : "living room",
                  "wantC" : 21.0,
                  "warmUpMinutes" : 87.5,
                  "overshootK" : 0.6,
                  "settledOperativeC" : 20.75,
                  "settledAirC" : 20.875,
                  "lastDayOperativeC" : 20.75,
                  "lastDayAirC" : 20.875,
                  "lastDayLeastC" : 20.5,
                  "lastDayMostC" : 21.0,
                  "lastDayDriftK" : 0.0,
                  "droopK" : 0.25,
                  "shortfallDegreeHours" : 4.5,
                  "shortfallOnceWarmDegreeHours" : 0.5,
                  "ratedW" : 1300.0,
                  "emitterPeakW" : 1480.0,
                  "lastDayEmitterW" : 491.0,
                  "lastDayPipesW" : 392.0,
                  "heatKWh" : 10.0,
                  "pipeHeatKWh" : 5.0
                } ],
                "flowMeanC" : 54.8,
                "returnMeanC" : 43.1,
                "returnPeakC" : 48.0,
                "condensingShare" : null,
                "returnBelowDewPointShare" : null,
                "boilerReturnC" : null,
                "sourceHeatKWh" : 44.0,
                "backupHeatKWh" : 2.0,
                "inputKWh" : 46.0,
                "seasonalFactor" : null,
                "pumpElectricityKWh" : 0.01,
                "pipeLossKWh" : 0.5,
                "energyBalanceError" : 0.0,
                "sourceStartsPerHour" : 1.25,
                "sourceStartsPerDay" : 30.0,
                "mostStartsInAnHour" : 2,
                "shortestRunMinutes" : 7.5,
                "atLeastOutputHours" : 0.5,
                "defrosts" : 4,
                "blockedMinutes" : 1.5,
                "waterVolumeLitres" : 46.0,
                "waterNeededLitres" : 61.0,
                "balance" : {
                  "balanced" : false,
                  "indexBranch" : "living room: emitter",
                  "headNeededKPa" : 12.5,
                  "headKPa" : 20.0,
                  "branches" : [ {
                    "name" : "living room: emitter",
                    "designFlowLitresPerHour" : 36.44,
                    "flowAsGivenLitresPerHour" : 14.57,
                    "flowLitresPerHour" : 14.57,
                    "lockshieldTurns" : 1.5,
                    "lockshieldKv" : 0.44,
                    "velocityMetresPerSecond" : 0.25,
                    "authority" : 0.125
                  } ],
                  "warnings" : [ "'living room: emitter': the valve has 13 % authority and governs its flow only when nearly shut; use a valve of smaller Kv, or less pressure from the pump" ]
                },
                "stepsUnagreed" : 0,
                "notices" : [ {
                  "code" : "little_authority",
                  "severity" : "advice",
                  "about" : "living room: emitter",
                  "words" : "'living room: emitter': the valve has 13 % authority and governs its flow only when nearly shut; use a valve of smaller Kv, or less pressure from the pump"
                } ]
              }, {
                "name" : "radiators",
                "emitterKind" : "radiator",
                "keepsUp" : false,
                "rooms" : [ {
                  "name" : "living room",
                  "wantC" : 21.0,
                  "warmUpMinutes" : null,
                  "overshootK" : 0.6,
                  "settledOperativeC" : null,
                  "settledAirC" : null,
                  "lastDayOperativeC" : 20.75,
                  "lastDayAirC" : 20.875,
                  "lastDayLeastC" : 20.5,
                  "lastDayMostC" : 21.0,
                  "lastDayDriftK" : 0.0,
                  "droopK" : 0.25,
                  "shortfallDegreeHours" : 4.5,
                  "shortfallOnceWarmDegreeHours" : 0.5,
                  "ratedW" : 1500.0,
                  "emitterPeakW" : 1480.0,
                  "lastDayEmitterW" : 491.0,
                  "lastDayPipesW" : 392.0,
                  "heatKWh" : 10.0,
                  "pipeHeatKWh" : 5.0
                } ],
                "flowMeanC" : 54.8,
                "returnMeanC" : 43.1,
                "returnPeakC" : 48.0,
                "condensingShare" : null,
                "returnBelowDewPointShare" : null,
                "boilerReturnC" : null,
                "sourceHeatKWh" : 44.0,
                "backupHeatKWh" : 2.0,
                "inputKWh" : 46.0,
                "seasonalFactor" : null,
                "pumpElectricityKWh" : 0.01,
                "pipeLossKWh" : 0.5,
                "energyBalanceError" : 0.0,
                "sourceStartsPerHour" : 1.25,
                "sourceStartsPerDay" : 30.0,
                "mostStartsInAnHour" : 2,
                "shortestRunMinutes" : 7.5,
                "atLeastOutputHours" : 0.5,
                "defrosts" : 4,
                "blockedMinutes" : 1.5,
                "waterVolumeLitres" : 46.0,
                "waterNeededLitres" : 61.0,
                "balance" : null,
                "stepsUnagreed" : 1,
                "notices" : [ {
                  "code" : "dead_end",
                  "severity" : "fault",
                  "about" : "",
                  "words" : "every valve is shut for 1.5 h while heat is called for: the pump works against a dead end; fit a bypass or leave one emitter open"
                } ]
              } ],
              "warnings" : [ "U-value 9 W/m²K of 'wall' is unusually high", "skirting: 'living room: emitter': the valve has 13 % authority and governs its flow only when nearly shut; use a valve of smaller Kv, or less pressure from the pump", "radiators: every valve is shut for 1.5 h while heat is called for: the pump works against a dead end; fit a bypass or leave one emitter open" ]
            }
            """);
  }
}
