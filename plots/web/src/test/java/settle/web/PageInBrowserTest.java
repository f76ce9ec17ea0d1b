package settle.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import com.deque.html.axecore.results.Rule;
import com.deque.html.axecore.selenium.AxeBuilder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.logging.Level;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.openqa.selenium.By;
import org.openqa.selenium.JavascriptExecutor;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;
import org.openqa.selenium.support.ui.WebDriverWait;
import settle.plots.live.Engine;
import settle.plots.live.LivePage;

/** The page from a disk in Chromium, where that is installed. */
class PageInBrowserTest {

  /** As in {@link SameFiguresTest}. */
  private static final double TOLERANCE = 1e-9;

  private static final Path CHROMIUM = Path.of("/usr/bin/chromium");
  private static final Path DRIVER = Path.of("/usr/bin/chromedriver");
  private static final Path TARGET = Path.of("target");
  private static final Path EXAMPLES = Path.of("..", "..", "scenarios", "examples");
  private static final long MOST_BYTES = 2_000_000;
  private static final Duration PATIENCE = Duration.ofMinutes(3);
  private static final Pattern NUMBER = Pattern.compile("-?\\d+(?:\\.\\d+)?(?:[eE][-+]?\\d+)?");

  @TempDir static Path folder;
  private static ChromeDriver browser;

  @BeforeAll
  static void start() {
    assumeThat(CHROMIUM).exists();
    assumeThat(DRIVER).exists();
    ChromeOptions options = new ChromeOptions();
    options.setBinary(CHROMIUM.toString());
    options.addArguments(
        "--headless=new", "--no-sandbox", "--disable-dev-shm-usage", "--window-size=1280,1000");
    LoggingPreferences logs = new LoggingPreferences();
    logs.enable(LogType.BROWSER, Level.ALL);
    options.setCapability("goog:loggingPrefs", logs);
    browser =
        new ChromeDriver(
            new ChromeDriverService.Builder().usingDriverExecutable(DRIVER.toFile()).build(),
            options);
    browser.manage().timeouts().scriptTimeout(PATIENCE);
  }

  @AfterAll
  static void stop() {
    if (browser != null) {
      browser.quit();
    }
  }

  static Stream<Path> examples() throws IOException {
    try (Stream<Path> files = Files.list(EXAMPLES)) {
      return files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList().stream();
    }
  }

  private static void open(Engine engine, String file, String text) throws IOException {
    Path page = folder.resolve("page.html");
    Files.writeString(page, new LivePage(engine, file, text, Map.of(), "0").html());
    assertThat(Files.size(page)).isLessThan(MOST_BYTES);
    browser.get(page.toUri().toString());
    until(
        "return settle.state.rest !== null || settle.state.trouble || settle.state.opened?.problems.length");
  }

  private static void open(Path example) throws IOException {
    open(Engine.webAssembly(TARGET), example.getFileName().toString(), Files.readString(example));
  }

  private static void until(String condition) {
    new WebDriverWait(browser, PATIENCE)
        .until(
            b -> {
              Object found = ((JavascriptExecutor) b).executeScript(condition);
              return found instanceof Boolean yes ? yes : found != null && !"".equals(found);
            });
  }

  private static String ask(String hand, String what, Object... given) {
    Object answer =
        browser.executeAsyncScript(
            "const done = arguments[3]; settle[arguments[0]](arguments[1], arguments[2]).then(done, (e) => done('!' + e.message));",
            hand,
            what,
            List.of(given));
    return (String) answer;
  }

  private static List<Double> numbers(String json) {
    List<Double> all = new ArrayList<>();
    Matcher matcher = NUMBER.matcher(json);
    while (matcher.find()) {
      all.add(Double.valueOf(matcher.group()));
    }
    return all;
  }

  private static String wordsOnly(String json) {
    return NUMBER.matcher(json).replaceAll("#");
  }

  private static void same(String what, String there, String here) {
    assertThat(wordsOnly(there)).as(what).isEqualTo(wordsOnly(here));
    List<Double> theirs = numbers(there);
    List<Double> ours = numbers(here);
    for (int i = 0; i < ours.size(); i++) {
      double scale = Math.max(1, Math.abs(ours.get(i)));
      assertThat(Math.abs(theirs.get(i) - ours.get(i)) / scale)
          .as("%s, number %d: %s, here %s", what, i, theirs.get(i), ours.get(i))
          .isLessThanOrEqualTo(TOLERANCE);
    }
  }

  private static List<String> complaints() {
    return browser.manage().logs().get(LogType.BROWSER).getAll().stream()
        .map(LogEntry::getMessage)
        .toList();
  }

  @ParameterizedTest
  @MethodSource("examples")
  void restIsThatOfTheVirtualMachineAndSoAreLevers(Path example) throws IOException {
    open(example);
    String name = example.getFileName().toString();
    String text = Files.readString(example);
    same(name, ask("ask", "rest", text, name), Page.rest(text, name));
    same(name, ask("ask", "open", text, name), Page.open(text, name));
    assertThat(complaints()).isEmpty();
  }

  @Test
  void theVerdictIsThatOfTheVirtualMachine() throws IOException {
    Path example = EXAMPLES.resolve("single-room.yaml");
    open(example);
    until("return settle.state.answer !== null && settle.state.working === ''");
    String text = Files.readString(example);
    String here = Page.confirm(text, "single-room.yaml", Told.NOBODY);
    same("confirm", ask("run", "confirm", text, "single-room.yaml"), here);
    same("odds", ask("run", "odds", text, 16), Page.odds(text, 16, Told.NOBODY));
    assertThat(browser.findElement(By.id("heard")).getDomProperty("textContent")).isNotBlank();
  }

  @Test
  void theJavaScriptEngineAnswersLikewise() throws IOException {
    Path example = EXAMPLES.resolve("single-room.yaml");
    String text = Files.readString(example);
    open(Engine.javaScript(TARGET), "single-room.yaml", text);
    same(
        "JavaScript",
        ask("ask", "rest", text, "single-room.yaml"),
        Page.rest(text, "single-room.yaml"));
  }

  /** What is shown while a lever is held is what the text says once it is let go. */
  @ParameterizedTest
  @MethodSource("examples")
  void aHeldLeverShowsWhatTheTextWillSay(Path example) throws IOException {
    String name = example.getFileName().toString();
    String text = Files.readString(example);
    for (settle.scenarios.edit.Lever lever : levers(text, name)) {
      double value = Math.min(lever.value() + 2 * lever.kind().step(), lever.most());
      String written = Page.moved(text, name, lever.id(), value);
      assertThat(written).as(lever.id()).doesNotStartWith("!");
      same(lever.id(), Page.restWith(text, name, lever.id(), value), Page.rest(written, name));
    }
  }

  private static List<settle.scenarios.edit.Lever> levers(String text, String name) {
    try {
      return settle.scenarios.edit.Levers.of(
          settle.scenarios.ScenarioReader.read(
                  text, name, settle.scenarios.document.ScenarioFolder.EMPTY)
              .house());
    } catch (settle.scenarios.ScenarioException e) {
      throw new IllegalArgumentException(e);
    }
  }

  @Test
  void aLeverIsMovedByKeysMarkedUndoneAndPutBack() throws IOException {
    open(EXAMPLES.resolve("single-room.yaml"));
    WebElement lever =
        browser.findElement(By.cssSelector("[data-lever^='FLOW_TEMPERATURE'] input[type=range]"));
    lever.sendKeys(Keys.ARROW_LEFT, Keys.ARROW_LEFT);
    until("return settle.state.text !== settle.state.original");
    assertThat(browser.findElements(By.cssSelector(".lever.moved"))).hasSize(1);
    browser.findElement(By.id("reset")).click();
    until("return settle.state.text === settle.state.original");
    until("return document.querySelectorAll('.lever.moved').length === 0");
    browser.findElement(By.id("undo")).click();
    until("return settle.state.text !== settle.state.original");
    assertThat(complaints()).isEmpty();
  }

  @Test
  void messagesOfTheReaderStandAtTheirLines() throws IOException {
    open(EXAMPLES.resolve("single-room.yaml"));
    WebElement area = browser.findElement(By.id("text"));
    area.sendKeys(Keys.chord(Keys.CONTROL, "a"));
    area.sendKeys("title: x\nrooms:\n  a: {sise: 3 x 3 x 3 m}\n");
    until("return settle.state.opened.problems.length > 0");
    assertThat(browser.findElement(By.id("trouble")).getText()).contains("Line 3").contains("sise");
    assertThat(browser.findElement(By.id("numbers")).getText()).contains("\u25b6 3");
  }

  @Test
  void anEngineThatStopsIsStartedAnew() throws IOException {
    open(EXAMPLES.resolve("single-room.yaml"));
    browser.executeScript("settle.stop()");
    browser
        .findElement(By.cssSelector("[data-lever^='FLOW_TEMPERATURE'] input[type=range]"))
        .sendKeys(Keys.ARROW_RIGHT);
    until("return settle.state.text !== settle.state.original");
    assertThat(browser.findElement(By.id("trouble")).isDisplayed()).isFalse();
  }

  @Test
  void hostileNamesStayNames() throws IOException {
    String hostile = "</script><img src=x onerror=document.title='hit'>&{script}";
    String text =
        Files.readString(EXAMPLES.resolve("single-room.yaml"))
            .replaceFirst("(?m)^title:.*", Matcher.quoteReplacement("title: \"" + hostile + "\""));
    open(Engine.webAssembly(TARGET), hostile + ".yaml", text);
    assertThat(browser.findElement(By.id("title")).getText()).isEqualTo(hostile);
    assertThat(browser.findElements(By.tagName("img"))).isEmpty();
    assertThat(browser.getTitle()).isNotEqualTo("hit");
    assertThat(complaints()).isEmpty();
  }

  @Test
  void nothingIsFetched() throws IOException {
    open(EXAMPLES.resolve("single-room.yaml"));
    Object fetched =
        browser.executeScript(
            "return performance.getEntriesByType('resource').map((r) => r.name).filter((n) => !n.startsWith('blob:'))");
    assertThat((List<?>) fetched).isEmpty();
    Object refused =
        browser.executeAsyncScript(
            "const done = arguments[0]; fetch('http://127.0.0.1:9/').then(() => done('fetched'), () => done('refused'))");
    assertThat(refused).isEqualTo("refused");
    assertThat(complaints()).anyMatch(line -> line.contains("Content Security Policy"));
  }

  @Test
  void noRuleOfAccessibilityIsBroken() throws IOException {
    open(EXAMPLES.resolve("mid-terrace.yaml"));
    browser.executeScript(
        "document.querySelectorAll('details').forEach((d) => { d.open = true; })");
    List<Rule> broken = new AxeBuilder().analyze(browser).getViolations();
    assertThat(broken).as(() -> broken.toString()).isEmpty();
  }

  @Test
  void aPhoneScrollsOneWayOnly() throws IOException {
    browser.executeCdpCommand(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", 390, "height", 844, "deviceScaleFactor", 1, "mobile", true));
    try {
      open(EXAMPLES.resolve("mid-terrace.yaml"));
      Object wide = browser.executeScript("return document.documentElement.scrollWidth");
      assertThat(((Number) wide).intValue()).isLessThanOrEqualTo(390);
    } finally {
      browser.executeCdpCommand("Emulation.clearDeviceMetricsOverride", Map.of());
    }
  }
}
