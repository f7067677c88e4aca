/** The marks on the stringer in the order they are pencilled: the heel, every corner, the end at the head. */
import { state } from './state.js';
import { say } from './words.js';

/** `{key, name, at, exact}`: `key` is what the drawing calls the mark. */
export function marks() {
    const { stringer } = state.answer.outcome;
    return [
        ...stringer.marks.map(({ corner, at }) => one(String(corner), say('corner', { corner }), at)),
        one('heel', say('heel'), stringer.heel),
        one('head', say('head-end'), stringer.headEnd),
    ];
}

const one = (key, name, at) => ({ key, name, at: at.line.tape, exact: at.exact.exact });

export const tickName = (mark) => `mark ${mark.key}`;
