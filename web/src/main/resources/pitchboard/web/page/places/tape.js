/** Tape: what was measured, what is still missing, and what it decides. */
import { html } from '../lib/lit-html.js';
import { missing } from '../missing.js';
import { cards } from '../pieces/cards.js';
import { fullTitle, isOne, open } from '../pieces/row.js';
import { state } from '../state.js';
import { sayCount, say } from '../words.js';

export function tapePlace() {
    const measured = state.form.line('measured');
    return html`
        <h2>${say('place.tape')}</h2>
        ${stillMissing()}
        ${cards(measured.lines.map((line) => line.field))}
    `;
}

function stillMissing() {
    const open = missing();
    if (open.length === 0) return html`<p class="soft">${say('nothing-missing')}</p>`;
    return html`<details class="card missing">
        <summary><strong>${sayCount('missing', open.length)}</strong></summary>
        <ul>
            ${open.map(({ field, decides }) => missingRow(field, decides))}
        </ul>
    </details>`;
}

const missingRow = (field, decides) => html`<li>
    <button class="row" @click=${() => open(firstOpen(field))}>
        <span class="row-name">${fullTitle(field)}</span>
        <span class="row-sure">
            ${decides.length ? say('decides', { what: decides.map((finding) => finding.subject).join('; ') }) : say('needed')}
        </span>
    </button>
</li>`;

/** A group cannot be answered as one: its first line is asked about. */
function firstOpen(field) {
    const line = state.form.line(field);
    return isOne(line) || line.kind !== 'group' || line.lead ? field : firstOpen(line.lines[0].field);
}
