package pitchboard.browser;

/** What the engine is compiled to. */
enum Target {
    JAVASCRIPT("(await import('/engine/engine.js')).run"),
    WEBASSEMBLY("(await (await import('/engine/engine-runtime.js')).load('/engine/engine.wasm')).exports.run");

    private final String entry;

    Target(String entry) {
        this.entry = entry;
    }

    /** How a page comes by the function. */
    String entry() {
        return entry;
    }
}
