/** Wood: the pieces, the stringer with its marks, and the marks to be checked off one by one. */
import { unsafeHTML } from '../lib/directives/unsafe-html.js';
import { html, nothing } from '../lib/lit-html.js';
import { marks, tickName } from '../marks.js';
import { capital } from '../pieces/row.js';
import { change, state } from '../state.js';
import { tick } from '../ticks.js';
import { say } from '../words.js';

export function woodPlace() {
    const outcome = state.answer?.outcome;
    if (!outcome?.stair) return html`<h2>${say('place.wood')}</h2><p>${say('no-wood')}</p>`;
    return html`
        <h2>${say('place.wood')}</h2>
        ${state.stale ? html`<p class="alarm">${say('stale')}</p>` : nothing}
        <section class="card">
            <h3>${say('stringer-marks')}</h3>
            <p>${say('datum')}</p>
            ${stringer()}
            <div class="buttons">
                <button class="main wide" @click=${() => change({ dialog: { name: 'reader', step: firstOpen() } })}>
                    ${say('read-to-me')}
                </button>
            </div>
            ${table()}
        </section>
        ${pieces(outcome.pieces)}
        <p class="caution">${say('caution.wood')}</p>
    `;
}

const isDone = (mark) => state.open.ticks.includes(tickName(mark));
const firstOpen = () => Math.max(0, marks().findIndex((mark) => !isDone(mark)));

function stringer() {
    const picture = state.answer.pictures.find((each) => each.id === 'stringer');
    return picture ? html`<figure class="drawing"><div class="sideways" tabindex="0" role="group" aria-label=${say('stringer-marks')}>${unsafeHTML(picture.svg)}</div></figure>` : nothing;
}

function table() {
    return html`<table class="marks">
        <caption class="unseen">
            ${say('stringer-marks')}
        </caption>
        <thead>
            <tr>
                <th scope="col">${say('mark')}</th>
                <th scope="col">${say('from-datum')}</th>
                <th scope="col">${say('checked')}</th>
            </tr>
        </thead>
        <tbody>
            ${marks().map(
                (mark) => html`<tr class=${isDone(mark) ? 'done' : ''}>
                    <th scope="row">${mark.name}</th>
                    <td class="figure">${mark.at}</td>
                    <td>${box(tickName(mark), mark.name)}</td>
                </tr>`,
            )}
        </tbody>
    </table>`;
}

const box = (name, what) => html`<label class="tick">
    <span class="unseen">${say('check-off', { what })}</span>
    <input type="checkbox" .checked=${state.open.ticks.includes(name)} @change=${(event) => tick(name, event.target.checked)} />
</label>`;

function pieces(all) {
    return html`<section class="card">
        <h3>${say('pieces')}</h3>
        <table class="pieces">
            <thead>
                <tr>
                    <th scope="col">${say('piece')}</th>
                    <th scope="col">${say('size')}</th>
                    <th scope="col">${say('cut')}</th>
                </tr>
            </thead>
            <tbody>
                ${all.map(
                    (piece) => html`<tr>
                        <th scope="row">${piece.mark} ${capital(piece.name)}<span class="soft">${piece.purpose}</span></th>
                        <td>
                            <span class="figure">${piece.pieces} × ${piece.length.tape}</span>
                            <span class="soft">${piece.thickness.tape} × ${piece.width.tape}</span>
                        </td>
                        <td>${box(`piece ${piece.mark}`, piece.name)}</td>
                    </tr>`,
                )}
            </tbody>
        </table>
    </section>`;
}
