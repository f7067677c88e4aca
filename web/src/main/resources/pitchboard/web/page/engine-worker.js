/**
 * Runs the engine beside the page. The first message says where its parts are; every other is a request, answered
 * under its number in the order they came.
 */
const GC_PROBE = new Uint8Array([0, 97, 115, 109, 1, 0, 0, 0, 1, 5, 1, 95, 1, 120, 0]);

let ready;

async function load({ runtime, wasm, script }) {
    if (globalThis.WebAssembly?.validate(GC_PROBE)) {
        try {
            return (await (await import(runtime)).load(wasm)).exports.run;
        } catch (trouble) {
            console.warn('the WebAssembly engine did not start, taking the other', trouble);
        }
    }
    return (await import(script)).run;
}

onmessage = async ({ data }) => {
    if (data.parts) {
        ready = load(data.parts);
        return;
    }
    try {
        const run = await ready;
        postMessage({ number: data.number, answer: JSON.parse(run(data.request)) });
    } catch (trouble) {
        postMessage({ number: data.number, trouble: String(trouble) });
    }
};
