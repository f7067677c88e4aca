/** A second look at the stringers by finite elements: only when it is asked for, since it takes a moment. */
import { ask, Cancelled } from '../engine.js';
import { html, nothing } from '../lib/lit-html.js';
import { unsafeHTML } from '../lib/directives/unsafe-html.js';
import { change, state } from '../state.js';
import { say } from '../words.js';
import { icon } from './icons.js';
import { capital } from './row.js';

export function secondLook() {
    const { told, of } = state.look;
    if (of !== state.answer) return html`<div class="buttons"><button @click=${look}>${say('look')}</button></div>`;
    return html`<div class="look" aria-live="polite">${told ? seen(told) : html`<p class="soft">${say('working')}</p>`}</div>`;
}

/** An answer that comes too late is dropped. */
async function look() {
    const { job, changes } = state.open;
    const of = state.answer;
    change({ look: { told: null, of } });
    try {
        const answer = await ask({ do: 'solve', job, ...(changes ? { changes } : {}), elements: 'yes', sheets: ['elements'] });
        if (state.answer === of) change({ look: { of, told: { finding: answer.outcome.strength.elements.finding, sheet: answer.sheets[0] } } });
    } catch (trouble) {
        change({ look: { told: null, of: null } });
        if (!(trouble instanceof Cancelled)) change({ notice: { name: 'engine-trouble', trouble: trouble.message } });
    }
}

function seen({ finding, sheet }) {
    return html`<h4>${icon(finding.verdict)} ${say('look.seen')}</h4>
        <p>${capital(finding.words)}.</p>
        ${finding.say && finding.say !== finding.words ? html`<p><strong>${capital(finding.say)}.</strong></p>` : nothing}
        <div class="sheet-paper">${unsafeHTML(sheet.svg)}</div>`;
}
