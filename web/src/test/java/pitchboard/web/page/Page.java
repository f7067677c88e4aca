package pitchboard.web.page;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.logging.Level;
import org.openqa.selenium.JavascriptException;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebDriverException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.WindowType;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.support.ui.FluentWait;

/** Eyes and fingers before the page: things are found by the words that people see or hear. */
final class Page {
    private static final Duration PATIENCE = Duration.ofSeconds(20);
    private static final Duration GLANCE = Duration.ofMillis(25);
    /** Whatever lies on top, and in it what can be tapped and has these words. */
    private static final String NAMED = "const top = [...document.querySelectorAll('dialog[open]')].at(-1) ?? document;"
            + "const flat = text => (text ?? '').replace(/\\s+/g, ' ').trim();"
            + "const seen = [...top.querySelectorAll('button, a, summary, label, [role=button]'),"
            + "...document.querySelectorAll('.notice button')].filter(one => one.checkVisibility());"
            + "const called = one => flat(one.getAttribute('aria-label') ?? one.innerText);"
            + "return seen.find(one => called(one) === given[0])"
            + " ?? seen.find(one => called(one).startsWith(given[0]));";

    private final ChromeDriver driver;

    Page(ChromeDriver driver) {
        this.driver = driver;
    }

    ChromeDriver driver() {
        return driver;
    }

    void open(String address) {
        driver.get("about:blank");
        driver.get(address);
    }

    void reload() {
        driver.navigate().refresh();
    }

    void on(Screen screen) {
        screen.use(driver);
    }

    /** Another window of the same browser, in sight at the same time; gives the name of the one before. */
    String openBeside(String address) {
        String before = driver.getWindowHandle();
        driver.switchTo().newWindow(WindowType.WINDOW);
        driver.get(address);
        return before;
    }

    void lookAt(String window) {
        driver.switchTo().window(window);
    }

    /** What a script comes to, which may wait; {@code given} are its arguments. */
    Object run(String script, Object... given) {
        return driver.executeAsyncScript(
                "const done = arguments[arguments.length - 1]; (async (...given) => {" + script
                        + "})(...[...arguments].slice(0, -1)).then(done, trouble => done('trouble: ' + trouble.stack));",
                given);
    }

    /** Waits until a script gives something, and gives that. */
    Object until(String script, Object... given) {
        return new FluentWait<>(this)
                .withTimeout(PATIENCE)
                .pollingEvery(GLANCE)
                .ignoring(JavascriptException.class)
                .withMessage(() -> script + " " + List.of(given))
                .until(page -> page.run(script, given));
    }

    /** Waits until something of this selector shows these words. */
    void untilSays(String selector, String words) {
        until(
                "return [...document.querySelectorAll(given[0])].some(one => one.innerText.includes(given[1]))",
                selector,
                words);
    }

    /** Waits until there is a stair, and another than the one that was headed by these words. */
    void untilAnotherStair(String headed) {
        until("const now = document.querySelector('.headline h2')?.innerText; return now && now !== given[0]", headed);
    }

    void untilSaved() {
        untilSays(".saving.saved", "saved");
    }

    void untilGone(String selector) {
        until("return !document.querySelector(given[0])", selector);
    }

    String text(String selector) {
        return (String) until("return document.querySelector(given[0])?.innerText", selector);
    }

    /** Whether there is such a thing at this moment. */
    boolean has(String selector) {
        return (boolean) run("return !!document.querySelector(given[0])", selector);
    }

    /** Taps what has these words. */
    void tap(String words) {
        tapFound(NAMED, words);
    }

    void tapOn(String selector) {
        tapFound("return [...document.querySelectorAll(given[0])].find(one => one.checkVisibility())", selector);
    }

    private void tapFound(String script, String what) {
        new FluentWait<>(this)
                .withTimeout(PATIENCE)
                .pollingEvery(GLANCE)
                .ignoring(WebDriverException.class)
                .withMessage("tap " + what)
                .until(page -> {
                    WebElement found = (WebElement) page.run(script, what);
                    if (found == null) {
                        return false;
                    }
                    run("given[0].scrollIntoView({ block: 'center' })", found);
                    found.click();
                    return true;
                });
    }

    /** The line of the job of this field, wherever it is shown. */
    static String row(String field) {
        return "button.row[data-field='" + field + "']";
    }

    /** Answers a question on the keypad: a piece is a key, several digits are several. */
    void answer(String field, String... keys) {
        tapOn(row(field));
        press(keys);
        tap("Done");
        untilGone("dialog[open]");
    }

    /** Answers a question that offers its answers. */
    void choose(String field, String answer) {
        tapOn(row(field));
        tap(answer);
        tap("Done");
        untilGone("dialog[open]");
    }

    void press(String... keys) {
        for (String key : keys) {
            tapFound(
                    "return [...document.querySelectorAll('.keypad button')].find(one => one.ariaLabel === given[0]"
                            + " || one.innerText.trim() === given[0])",
                    key);
        }
    }

    /** Types over what stands in the field that has the focus. */
    void typeOver(String words) {
        until("return document.activeElement?.matches('input')");
        new Actions(driver)
                .keyDown(Keys.CONTROL)
                .sendKeys("a")
                .keyUp(Keys.CONTROL)
                .sendKeys(words)
                .perform();
    }

    /** Puts all words at once in place of what stands in the field that has the focus. */
    void pasteOver(String words) {
        until("return document.activeElement?.matches('input')");
        run("document.activeElement.select()");
        driver.executeCdpCommand("Input.insertText", Map.of("text", words));
    }

    void keys(CharSequence... keys) {
        new Actions(driver).sendKeys(keys).perform();
    }

    void goTo(String place) {
        tapFound(
                "return [...document.querySelectorAll('.ways button')].find(one => one.innerText.startsWith(given[0]))",
                place);
        until("return document.querySelector('.ways [aria-current=page]')?.innerText.startsWith(given[0])", place);
    }

    /** How it looks to somebody who asked the device for this. */
    void prefers(String feature, String value) {
        driver.executeCdpCommand(
                "Emulation.setEmulatedMedia", Map.of("features", List.of(Map.of("name", feature, "value", value))));
    }

    /** How it runs on a device whose processor is this many times slower. */
    void isSlow(int times) {
        driver.executeCdpCommand("Emulation.setCPUThrottlingRate", Map.of("rate", times));
    }

    /** What the browser complained about since it was last asked: scripts, styles, files, the page's own policy. */
    List<String> complaints() {
        return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
                .filter(entry -> entry.getLevel().intValue() >= Level.WARNING.intValue())
                .map(LogEntry::getMessage)
                .toList();
    }
}
