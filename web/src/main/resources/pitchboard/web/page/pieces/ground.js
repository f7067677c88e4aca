/** How the rise is taken: at one place over level ground, or by readings from a level line over ground that slopes. */
import { valueOf, writeAll } from '../desk.js';
import { html, nothing } from '../lib/lit-html.js';
import { change, state } from '../state.js';
import { say } from '../words.js';

const RISE = 'measured > rise';
const LINE = 'measured > level line';

/** Whether a line has no place on the page while the rise is taken the other way. */
export const isOtherWay = (field) =>
    (field === LINE && valueOf(LINE) === undefined) || (field === RISE && valueOf(LINE) !== undefined);

/** The way over from one to the other, beside the one that is used. */
export function otherGround(field) {
    if (field === RISE) return way('ground-slopes', [[RISE, undefined], [`${LINE} > readings`, [{}, {}]]], `${LINE} > readings > 1 > out`);
    if (field === LINE) return way('ground-level', [[LINE, undefined]], RISE);
    return nothing;
}

const way = (words, changes, first) =>
    html`<div class="buttons"><button @click=${() => takeItSo(changes, first)}>${say(words)}</button></div>`;

function takeItSo(changes, first) {
    const before = state.asking?.before ?? state.open.job;
    writeAll(changes);
    change({ asking: { field: first, before } });
}
