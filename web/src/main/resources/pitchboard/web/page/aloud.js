/** Tape text as it is said aloud: `3'-4 5/16"` is three feet, four and five sixteenths. */
const BELOW = { 2: 'half', 4: 'quarter', 8: 'eighth', 16: 'sixteenth', 32: 'thirty-second', 64: 'sixty-fourth' };

export function inWords(tape) {
    const inches = tape.match(/^(?:(\d+)'-?)?\s*(?:(\d+)(?:\s|"|$))?(?:(\d+)\/(\d+))?"?$/);
    if (!inches || /mm|m$/.test(tape)) return tape;
    const [, feet, whole, top, below] = inches;
    const part = top && `${top} ${BELOW[below]}${top === '1' ? '' : 's'}`;
    const rest = [whole, part].filter(Boolean).join(' and ');
    return [feet && `${feet} ${feet === '1' ? 'foot' : 'feet'}`, rest && `${rest} ${rest === '1' ? 'inch' : 'inches'}`]
        .filter(Boolean)
        .join(', ');
}
