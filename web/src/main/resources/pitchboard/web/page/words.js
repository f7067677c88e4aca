/** What the page says, by name: every word a person reads comes from here or from the engine. */
import english from './words.en.js';

const words = english;

/** The words of this name; `{what}` in them is replaced by `values.what`. */
export function say(name, values = {}) {
    const text = words[name];
    if (text === undefined) throw new Error(`no words for ${name}`);
    return text.replace(/\{(\w+)\}/g, (_, key) => values[key] ?? '');
}

/** One form for one thing, another for any other number of them. */
export const sayCount = (name, count) => say(count === 1 ? `${name}.one` : `${name}.many`, { count });
