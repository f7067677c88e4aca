/** The marks on the stringer in the order they are pencilled: the heel, every corner, the end at the head. */
import { state } from './state.js';
import { say } from './words.js';

/** `{key, name, at}`: `key` is what the drawing calls the mark. */
export function marks() {
    const { stringer } = state.answer.outcome;
    return [
        ...stringer.marks.map(({ corner, at }) => one(String(corner), say('corner', { corner }), at)),
        one('heel', say('heel'), stringer.heel),
        one('head', say('head-end'), stringer.headEnd),
    ];
}

/** As the tape is read while it lies along a board, and as the drawing has it: in inches alone, without feet. */
const running = (line) => (line.exact.endsWith(' in') ? line.exact.replace(/ in$/, '"') : line.tape);

const one = (key, name, at) => ({ key, name, at: running(at.line) });

export const tickName = (mark) => `mark ${mark.key}`;
