package pitchboard.web.page;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.logging.Level;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;

/** The browser of the machine, without a window: started once, shared by all classes, and closed after the last. */
final class Chromium implements BeforeAllCallback, AutoCloseable {
    private final ChromeDriverService service;
    private final ChromeDriver driver;

    /** For JUnit, which makes one for each class; the browser is another. */
    Chromium() {
        this.service = null;
        this.driver = null;
    }

    private Chromium(ChromeDriverService service) {
        this.service = service;
        this.driver = new ChromeDriver(service, options());
        driver.manage().timeouts().scriptTimeout(Duration.ofSeconds(30));
    }

    @Override
    public void beforeAll(ExtensionContext context) {
        List<String> missing = Stream.of("chromium", "chromedriver")
                .filter(name -> find(name).isEmpty())
                .toList();
        Assumptions.assumeTrue(
                missing.isEmpty(),
                () -> "there is no " + String.join(" and no ", missing)
                        + " on the PATH, so the page was not tried. On Debian: apt-get install chromium chromium-driver");
        Shared.start(context);
    }

    /** The one browser of this run. */
    static ChromeDriver driver() {
        return Shared.browser.driver;
    }

    private static final class Shared {
        private static Chromium browser;

        private static void start(ExtensionContext context) {
            browser = context.getRoot()
                    .getStore(ExtensionContext.Namespace.create(Chromium.class))
                    .computeIfAbsent("browser", any -> launch(), Chromium.class);
        }
    }

    /** With the driver named outright, so that nothing is looked for or fetched. */
    private static Chromium launch() {
        return new Chromium(new ChromeDriverService.Builder()
                .usingDriverExecutable(find("chromedriver").orElseThrow().toFile())
                .build());
    }

    private static ChromeOptions options() {
        LoggingPreferences told = new LoggingPreferences();
        told.enable(LogType.BROWSER, Level.ALL);
        ChromeOptions options = new ChromeOptions();
        options.setBinary(find("chromium").orElseThrow().toFile());
        options.setCapability(ChromeOptions.LOGGING_PREFS, told);
        options.setExperimentalOption("prefs", Map.of("plugins.always_open_pdf_externally", true));
        options.addArguments("--headless=new", "--disable-dev-shm-usage", "--lang=en-GB", "--window-size=1280,800");
        if (System.getProperty("user.name").equals("root")) {
            options.addArguments("--no-sandbox"); // it has none for root
        }
        return options;
    }

    private static Optional<Path> find(String program) {
        return Stream.of(System.getenv("PATH").split(File.pathSeparator))
                .map(folder -> Path.of(folder, program))
                .filter(Files::isExecutable)
                .findFirst();
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
