package settle.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import settle.scenarios.ScenarioException;
import settle.scenarios.file.ScenarioFiles;
import settle.sim.house.House;
import settle.sim.study.Verdict;

/** The shipped houses with their verdicts: each takes seconds to find, so tests share it. */
public final class ExampleVerdicts {

  private static final Map<String, ExampleVerdicts> READ = new HashMap<>();

  private final House house;
  private final List<Verdict> found = new ArrayList<>();

  private ExampleVerdicts(House house) {
    this.house = house;
  }

  /**
   * An example.
   *
   * @param file its name in the folder of the examples
   */
  public static synchronized ExampleVerdicts of(String file) throws ScenarioException {
    ExampleVerdicts example = READ.get(file);
    if (example == null) {
      Path path = Path.of("..", "scenarios", "examples", file);
      example = new ExampleVerdicts(ScenarioFiles.read(path).house());
      READ.put(file, example);
    }
    return example;
  }

  public House house() {
    return house;
  }

  /** The verdicts on its first arrangements, so many. */
  public synchronized List<Verdict> first(int arrangements) {
    while (found.size() < arrangements) {
      found.add(Verdict.of(house, house.arrangements().get(found.size())));
    }
    return List.copyOf(found.subList(0, arrangements));
  }

  /** The verdicts on all of its arrangements. */
  public List<Verdict> all() {
    return first(house.arrangements().size());
  }
}
