/** The lines of a part of the job as cards of rows. */
import { valueOf, write } from '../desk.js';
import { html, nothing } from '../lib/lit-html.js';
import { state } from '../state.js';
import { say } from '../words.js';
import { lesson } from './answer.js';
import { isOtherWay, otherGround } from './ground.js';
import { capital, isOne, open, row, rows, titleOf } from './row.js';

/** Single lines stand together; every group has a card of its own. */
export function cards(fields) {
    const shown = fields.filter((field) => !isOtherWay(field));
    const alone = shown.filter((field) => isOne(state.form.line(field)));
    const groups = shown.filter((field) => !alone.includes(field));
    return [
        html`<ul class="card">
            ${alone.map((field) => row(field))}
        </ul>`,
        ...groups.map((field) => (state.form.line(field).kind === 'list' ? listCard(field) : groupCard(field))),
    ];
}

export function groupCard(field) {
    const line = state.form.line(field);
    return html`<section class="card">
        <h3>${titleOf(field)}</h3>
        ${lesson(field)}
        <p class="soft">${capital(line.meaning)}.</p>
        <ul>
            ${rows(field)}
        </ul>
        ${line.lines.filter((inner) => inner.kind === 'list').map((inner) => listCard(`${field} > ${inner.name}`))}
        ${otherGround(field)}
    </section>`;
}

/** Pieces of a list, each with its rows, and a way to one more. */
export function listCard(field) {
    const line = state.form.line(field);
    const value = valueOf(field);
    const items = Array.isArray(value) ? value : typeof value === 'object' ? [value] : [];
    return html`<section class="card">
        <h3>${titleOf(field)}</h3>
        <p class="soft">${capital(line.meaning)}.</p>
        ${items.map((_, index) => item(`${field} > ${index + 1}`, line, items.length > 1 || line.instead.length > 0))}
        <div class="buttons">
            <button @click=${() => add(field, items, line)}>${say('add', { what: line.name })}</button>
            ${line.instead.map(
                (word) => html`<button aria-pressed=${value === word} @click=${() => write(field, word)}>${capital(word)}</button>`,
            )}
        </div>
    </section>`;
}

const item = (field, line, removable) => html`<div class="item">
    <ul>
        ${line.lines.map((inner) => row(`${field} > ${inner.name}`))}
    </ul>
    ${removable ? html`<button @click=${() => write(field, undefined)}>${say('remove')}</button>` : nothing}
</div>`;

function add(field, items, line) {
    write(`${field} > ${items.length + 1}`, {});
    open(`${field} > ${items.length + 1} > ${line.lines[0].name}`);
}
