/**
 * The page as one file that was taken along: it holds the engine and one job, and has no server. What the file holds is
 * in script elements that do not run, each under its name.
 */
const held = document.getElementById('along');
const urls = new Map();

export const inAlong = () => held !== null;

/** The job that came with the file: `{id, version, name, job, changes}`. */
export const alongJob = () => JSON.parse(held.textContent);

const TYPES = { js: 'text/javascript', wasm: 'application/wasm' };

/** An address, good while the page is open, of a part that the file holds. */
export function alongUrl(name) {
    if (!urls.has(name)) {
        const type = TYPES[name.split('.').pop()];
        const packed = document.querySelector(`script[data-file="${name}"]`).textContent.trim();
        const bytes = Uint8Array.from(atob(packed), (letter) => letter.charCodeAt(0));
        urls.set(name, URL.createObjectURL(new Blob([bytes], { type })));
    }
    return urls.get(name);
}
