/** The engine, in a worker of its own: requests in, answers out, as docs/browser.md describes them. */
import { inAlong, alongUrl } from './along.js';

const waiting = new Map();
let worker = start();
let last = 0;

function start() {
    const begun = inAlong()
        ? new Worker(alongUrl('engine-worker.js'), { type: 'module' })
        : new Worker('/page/engine-worker.js', { type: 'module' });
    begun.postMessage({ parts: parts() });
    begun.onmessage = ({ data }) => {
        const { resolve, reject } = waiting.get(data.number);
        waiting.delete(data.number);
        data.trouble ? reject(new Error(data.trouble)) : resolve(data.answer);
    };
    begun.onerror = (event) => failAll(new Error(event.message || 'the engine did not start'));
    return begun;
}

function parts() {
    const at = inAlong() ? alongUrl : (name) => `/engine/${name}`;
    return { runtime: at('engine-runtime.js'), wasm: at('engine.wasm'), script: at('engine.js') };
}

function failAll(trouble) {
    waiting.forEach(({ reject }) => reject(trouble));
    waiting.clear();
}

/** Asks, and promises the answer. */
export function ask(request) {
    const number = ++last;
    return new Promise((resolve, reject) => {
        waiting.set(number, { resolve, reject });
        worker.postMessage({ number, request: JSON.stringify(request) });
    });
}

/** Stops whatever is being worked out; what was asked is refused. The next request starts afresh. */
export function stop() {
    worker.terminate();
    failAll(new Cancelled());
    worker = start();
}

export class Cancelled extends Error {}
