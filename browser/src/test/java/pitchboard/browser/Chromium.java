package pitchboard.browser;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;

/** A browser without a window. */
final class Chromium implements AutoCloseable {
    private final ChromeDriverService service;
    private final ChromeDriver driver;

    private Chromium(ChromeDriverService service, ChromeDriver driver) {
        this.service = service;
        this.driver = driver;
    }

    /** Why no browser can be started here; empty when one can. */
    static Optional<String> missing() {
        List<String> missing = Stream.of("chromium", "chromedriver")
                .filter(name -> find(name).isEmpty())
                .toList();
        return missing.isEmpty()
                ? Optional.empty()
                : Optional.of("there is no " + String.join(" and no ", missing)
                        + " on the PATH, so nothing was compared in a browser. On Debian:"
                        + " apt-get install chromium chromium-driver");
    }

    static Chromium start() {
        ChromeOptions options = new ChromeOptions();
        options.setBinary(find("chromium").orElseThrow().toFile());
        options.addArguments("--headless=new", "--disable-dev-shm-usage");
        if (System.getProperty("user.name").equals("root")) {
            options.addArguments("--no-sandbox"); // it has none for root
        }
        ChromeDriverService service = new ChromeDriverService.Builder()
                .usingDriverExecutable(find("chromedriver").orElseThrow().toFile())
                .build();
        ChromeDriver driver = new ChromeDriver(service, options);
        driver.manage().timeouts().scriptTimeout(Duration.ofMinutes(5));
        return new Chromium(service, driver);
    }

    private static Optional<Path> find(String program) {
        return Stream.of(System.getenv("PATH").split(File.pathSeparator))
                .map(folder -> Path.of(folder, program))
                .filter(Files::isExecutable)
                .findFirst();
    }

    void resize(int width, int height) {
        driver.manage().window().setSize(new Dimension(width, height));
    }

    void open(String address) {
        driver.get(address);
    }

    /** What a script comes to that may wait; {@code given} are its arguments. */
    Object run(String script, Object... given) {
        return driver.executeAsyncScript(
                "const done = arguments[arguments.length - 1];" + "(async (...given) => {" + script
                        + "})(...arguments).then(done, trouble => done('' + trouble + trouble.stack));",
                given);
    }

    /** Seconds of processor time that the page has taken so far: steadier than the clock on a busy machine. */
    double processorSeconds() {
        driver.executeCdpCommand("Performance.enable", Map.of("timeDomain", "threadTicks"));
        List<?> metrics = (List<?>)
                driver.executeCdpCommand("Performance.getMetrics", Map.of()).get("metrics");
        return metrics.stream()
                .map(metric -> (Map<?, ?>) metric)
                .filter(metric -> metric.get("name").equals("TaskDuration"))
                .mapToDouble(metric -> ((Number) metric.get("value")).doubleValue())
                .sum();
    }

    @Override
    public void close() {
        try {
            driver.quit();
        } finally {
            service.stop();
        }
    }
}
