/** The same lines were changed here and elsewhere: both are shown, and a person decides line by line. */
import { put } from '../fields.js';
import { html } from '../lib/lit-html.js';
import { over } from '../pieces/over.js';
import { fullTitle } from '../pieces/row.js';
import { change, state } from '../state.js';
import { decide } from '../sync.js';
import { say, sayCount } from '../words.js';

export function conflictSheet() {
    const { conflicts, picked = {} } = state.conflict;
    const open = conflicts.filter(({ field }) => !picked[field]).length;
    return over({ name: 'conflict', closed: () => {} }, html`
        <h2 id="over-title">${say('conflict')}</h2>
        <p>${say('conflict-why')}</p>
        ${conflicts.map((conflict) => choice(conflict, picked[conflict.field]))}
        <button class="main wide" ?disabled=${open > 0} @click=${() => decide(decided())}>
            ${open > 0 ? sayCount('to-decide', open) : say('keep-these')}
        </button>
    `);
}

const choice = ({ field, mine, theirs }, picked) => html`<fieldset class="stack">
    <legend>${fullTitle(field)}</legend>
    <div class="checks two">
        ${option(field, 'mine', mine, picked)} ${option(field, 'theirs', theirs, picked)}
    </div>
</fieldset>`;

const option = (field, side, value, picked) => html`<label class="check">
    <input type="radio" name=${field} .checked=${picked === side} @change=${() => pick(field, side)} />
    <span class="soft">${say(`side.${side}`)}</span><span>${words(value)}</span>
</label>`;

/** A line that was taken out, or a part of the job with lines of its own, in a few words. */
function words(value) {
    if (value === null || value === undefined) return say('nothing');
    if (typeof value === 'string') return value;
    const parts = Array.isArray(value) ? value.map(words) : Object.entries(value).map(([key, inner]) => `${key} ${words(inner)}`);
    return parts.join(', ');
}

function pick(field, side) {
    const { conflict } = state;
    change({ conflict: { ...conflict, picked: { ...conflict.picked, [field]: side } } });
}

function decided() {
    const { job, conflicts, picked } = state.conflict;
    return conflicts.reduce(
        (all, { field, theirs }) => (picked[field] === 'theirs' ? put(state.form, all, field, theirs ?? undefined) : all),
        job,
    );
}
