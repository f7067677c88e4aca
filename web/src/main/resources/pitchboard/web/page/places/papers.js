/** Papers: every sheet as a picture, and ways to have them on paper or take them along. */
import { inAlong } from '../along.js';
import { stop } from '../engine.js';
import { html, nothing } from '../lib/lit-html.js';
import { unsafeHTML } from '../lib/directives/unsafe-html.js';
import { costs } from '../pieces/costs.js';
import { row } from '../pieces/row.js';
import { links } from '../server.js';
import { drawSheets, printSheets, saveAlong, saveFile, share } from '../sheets.js';
import { change, state } from '../state.js';
import { isSaved, saveAll } from '../sync.js';
import { say } from '../words.js';

export function papersPlace() {
    if (!state.answer?.outcome.stair) return html`<h2>${say('place.papers')}</h2><p>${say('no-papers')}</p>`;
    drawSheets();
    return html`
        <h2>${say('place.papers')}</h2>
        ${state.answer.outcome.failing ? html`<p class="alarm fails">${say('papers-fail')}</p>` : nothing}
        ${actions()}
        <ul class="card">
            ${['date', 'paper', 'mark to', 'for', 'place', 'job'].map((field) => row(field))}
        </ul>
        ${inAlong() ? nothing : costs(onceSaved)} ${sheets()}
        <p class="caution">${say('caution.papers')}</p>
    `;
}

function actions() {
    const { id } = state.open;
    return html`<div class="buttons">
        ${inAlong() ? nothing : html`<a class="button main" href=${links.papers(id)} @click=${onceSaved} target="_blank">${say('pdf')}</a>`}
        <button class=${inAlong() ? 'main' : ''} @click=${printSheets} ?disabled=${!state.sheets?.drawn}>${say('print')}</button>
        ${navigator.share ? html`<button @click=${share}>${say('share')}</button>` : nothing}
        ${inAlong()
            ? html`<button @click=${saveAlong}>${say('save-along')}</button>`
            : html`<a class="button" href=${links.along(id)} @click=${onceSaved} download>${say('take-along')}</a>`}
        <button @click=${saveFile}>${say('job-file')}</button>
    </div>`;
}

/** What the server makes shows what was saved: follows a link of its own only once that is all there is. */
async function onceSaved(event) {
    if (isSaved(state.open)) return;
    event.preventDefault();
    const { href, target } = event.currentTarget;
    // Opened at once: later the browser would not take it for the answer to a tap.
    const view = target ? open('', target) : window;
    if (await saveAll()) view.location = href;
    else if (target) view.close();
}

function sheets() {
    const { sheets } = state;
    if (sheets?.drawing) {
        return html`<p role="status" class="progress">
            <progress></progress> ${say('drawing-sheets')} <button @click=${cancel}>${say('cancel')}</button>
        </p>`;
    }
    if (!sheets?.drawn) {
        return html`<p>${say('sheets-stopped')} <button @click=${() => change({ sheets: null })}>${say('draw-sheets')}</button></p>`;
    }
    return html`<ol class="sheets">
        ${sheets.drawn.map((sheet, index) => picture(sheet, index))}
    </ol>`;
}

function cancel() {
    stop();
    change({ sheets: { stopped: true } });
}

const picture = (sheet, index) => html`<li>
    <button class="sheet-picture" @click=${() => change({ dialog: { name: 'sheet', index } })}>
        <span class="sheet-paper">${unsafeHTML(sheet.svg)}</span>
        <span>${index + 1}. ${sheet.title}</span>
    </button>
</li>`;
