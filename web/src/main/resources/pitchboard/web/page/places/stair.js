/** Stair: the drawing, every stair there could be, and what is wanted. */
import { html, nothing } from '../lib/lit-html.js';
import { lesson } from '../pieces/answer.js';
import { dots } from '../pieces/dots.js';
import { drawing } from '../pieces/drawing.js';
import { groupCard } from '../pieces/cards.js';
import { capital, fullTitle, isOne, quoted, row, titleOf } from '../pieces/row.js';
import { choose } from '../desk.js';
import { needed, wrong } from '../missing.js';
import { state } from '../state.js';
import { say, sayCount } from '../words.js';

export function stairPlace() {
    const outcome = state.answer?.outcome;
    return html`
        ${state.problems.length ? cannotRead() : nothing}
        ${outcome ? headline(outcome) : html`<p>${state.problems.length ? say('no-stair-yet') : say('working')}</p>`}
        ${picture()} ${outcome ? [dots(), choices(outcome.choices)] : nothing} ${wanted()}
    `;
}

function cannotRead() {
    const open = needed().length;
    return html`<div class="alarm" role="status">
        <strong>${say(state.stale ? 'stale' : 'unread')}</strong>
        <ul>
            ${wrong().slice(0, 5).map((problem) => html`<li>${fullTitle(problem.field)}: ${quoted(problem.words)}</li>`)}
            ${open > 0 ? html`<li>${sayCount('see-tape', open)}</li>` : nothing}
        </ul>
    </div>`;
}

/** Nobody should read that no rule fails and think that it carries. */
function verdict(findings, strength) {
    if (strength?.failing) return 'carries-not';
    return findings.some((each) => each.verdict === 'fail') ? 'some-rule-fails' : 'no-rule-fails';
}

function headline({ outcome, stair, failing, strength, findings }) {
    if (outcome !== 'designed') return html`<div class="alarm fails"><strong>${say('no-stair-fits')}</strong></div>`;
    return html`<div class="headline">
        <h2>
            ${say('headline', { risers: stair.risers, rise: stair.rise.tape, run: stair.run.tape })}
        </h2>
        <p class=${failing ? 'fails' : 'holds'}>${say(verdict(findings, strength))}</p>
    </div>`;
}

const picture = () => {
    const found = state.answer?.pictures.find((each) => each.id === 'stair');
    return found ? drawing(found, { stale: state.stale }) : nothing;
};

function choices({ allowed, otherwiseAllowed, nearMisses }) {
    return html`<section class="card">
        <h3>${say('best-first')}</h3>
        <ul>
            ${[...allowed, ...otherwiseAllowed].slice(0, 6).map(choice)}
        </ul>
        ${nearMisses.length
            ? html`<details>
                  <summary>${say('near-misses')}</summary>
                  <ul>
                      ${nearMisses.map(choice)}
                  </ul>
              </details>`
            : nothing}
    </section>`;
}

const choice = (option) => html`<li>
    <button class="row" @click=${() => choose(option)}>
        <span class="row-name">${say('option', { risers: option.risers, rise: option.rise.tape, run: option.run.tape })}</span>
        ${option.objections.map((objection) => html`<span class="row-problem">${objection.what}: ${objection.change}</span>`)}
    </button>
</li>`;

function wanted() {
    const lines = state.form.line('wanted').lines;
    return [
        html`<h2>${say('wanted')}</h2>`,
        ...lines.filter((line) => !isOne(line) || line.choices.length).map((line) => card(line)),
        html`<ul class="card">
            ${lines.filter((line) => isOne(line) && !line.choices.length).map((line) => row(line.field))}
        </ul>`,
    ];
}

function card(line) {
    if (!isOne(line)) return groupCard(line.field);
    return html`<section class="card">
        <h3>${titleOf(line.field)}</h3>
        ${lesson(line.field)}
        <p class="soft">${capital(line.meaning)}.</p>
        <ul>
            ${row(line.field)}
        </ul>
    </section>`;
}
