package settle.scenarios.house;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import settle.scenarios.control.ControlSection;
import settle.scenarios.definition.Definitions;
import settle.scenarios.document.ScenarioFolder;
import settle.scenarios.format.Key;
import settle.scenarios.format.Section;
import settle.scenarios.format.Value;
import settle.scenarios.pipes.DistributionReader;
import settle.scenarios.room.Programmes;
import settle.scenarios.room.RoomsReader;
import settle.scenarios.source.SourceSection;
import settle.scenarios.weather.SiteSection;
import settle.sim.house.Arrangement;
import settle.sim.house.Building;
import settle.sim.house.Heating;
import settle.sim.house.House;
import settle.sim.house.RunSettings;
import settle.sim.house.WaterProperties;
import settle.sim.source.Source;

/** Reads the whole house. */
public final class HouseReader {

  /**
   * What was read.
   *
   * @param house the house
   * @param known everything its scenario can use by name
   */
  public record Read(House house, Definitions known) {}

  private HouseReader() {}

  /**
   * The house of a scenario. Mistakes are noted where the sections note them; the house is only to
   * be used where there are none.
   *
   * @param root the top of the file
   * @param format what it may say
   * @param catalogue what can be used by name besides the scenario's own definitions
   * @param file where the scenario stands: its title where it has none
   * @param folder what lies beside it, such as weather
   * @return the house and what it could use by name
   */
  public static Read read(
      Section root,
      ScenarioFormat format,
      Definitions catalogue,
      String file,
      ScenarioFolder folder) {
    Definitions known = Definitions.read(root, format.sections(), catalogue);
    Map<String, Value> roomValues = root.named(ScenarioFormat.ROOMS);
    List<String> roomNames = List.copyOf(roomValues.keySet());

    Section control = root.section(ScenarioFormat.CONTROL);
    Programmes programmes = new Programmes(control);
    SiteSection site = new SiteSection(root.section(ScenarioFormat.SITE));
    RoomsReader rooms = new RoomsReader(known, site, programmes, roomNames);
    roomValues.forEach(rooms::read);
    rooms.close();

    DistributionReader distribution =
        new DistributionReader(root.section(ScenarioFormat.DISTRIBUTION), known, roomNames);
    ArrangementsReader arranged =
        new ArrangementsReader(known, rooms.drafts(), distribution.mainNames());
    List<Arrangement> arrangements = arranged.read(root.named(ScenarioFormat.ARRANGEMENTS));
    distribution.warnOfMainsUnused(arrangements);
    Key sourceKey = format.source();
    SourceSection sourceReader =
        new SourceSection(
            root.has(sourceKey) ? Optional.of(root.section(sourceKey)) : Optional.empty(),
            format.sources());
    Source source = sourceReader.source(known);
    RunSettings run = RunSection.run(root.section(ScenarioFormat.RUN), programmes.any());
    House house =
        new House(
            title(root, file),
            site.designOutdoor(),
            site.weather(folder, run),
            new Building(rooms.rooms(), rooms.partitions(), rooms.airExchanges()),
            arrangements,
            new Heating(
                WaterProperties.AT_50,
                distribution.read(sourceReader.usualDrop(), sourceReader.usualPumpPower()),
                source,
                sourceReader.buffer(),
                new ControlSection(control, roomNames, programmes.any())
                    .read(source, sourceReader.it(), arrangements),
                programmes.hotWater()),
            AimsSection.read(root.section(ScenarioFormat.AIMS)),
            run);
    new Doubts(house, root, sourceKey, rooms.drafts()).note();
    arranged.warnOfPipesAssumed(house);
    sourceReader.doubt(house);
    return new Read(house, known);
  }

  private static String title(Section root, String file) {
    if (root.has(ScenarioFormat.TITLE)) {
      return root.words(ScenarioFormat.TITLE, "");
    }
    String name =
        file.substring(Math.max(file.lastIndexOf('/'), file.lastIndexOf('\\')) + 1)
            .replaceFirst("\\.ya?ml$", "")
            .replace('-', ' ');
    root.note(ScenarioFormat.TITLE, name);
    return name;
  }
}
