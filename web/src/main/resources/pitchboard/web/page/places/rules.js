/** Rules: what the book says of this stair, worst first, each with its place on the drawing and what to do. */
import { valueOf, write } from '../desk.js';
import { html, nothing } from '../lib/lit-html.js';
import { listCard } from '../pieces/cards.js';
import { carries } from '../pieces/carries.js';
import { detail } from '../pieces/drawing.js';
import { icon } from '../pieces/icons.js';
import { capital, fullTitle, isOne, open, row } from '../pieces/row.js';
import { underOthers } from '../pieces/under.js';
import { state } from '../state.js';
import { say, sayCount } from '../words.js';

const ORDER = ['fail', 'cannot tell', 'pass', 'does not apply'];

export function rulesPlace() {
    const outcome = state.answer?.outcome;
    return html`
        <h2>${say('place.rules')}</h2>
        <ul class="card">
            ${row('rulebook')}
        </ul>
        ${listCard('local limits')}
        ${outcome?.findings ? groups(outcome.findings) : html`<p>${say('no-findings')}</p>`}
        ${outcome?.findings ? underOthers() : nothing}
        ${outcome?.strength ? carries(outcome.strength) : nothing}
        <p class="caution">${say('caution.rules')}</p>
    `;
}

function groups(findings) {
    const numbered = findings.map((finding, index) => ({ ...finding, index }));
    return ORDER.map((verdict) => group(verdict, numbered.filter((finding) => finding.verdict === verdict)));
}

function group(verdict, findings) {
    if (findings.length === 0) return nothing;
    const list = html`<ul>
        ${findings.map(finding)}
    </ul>`;
    const name = verdict.replaceAll(' ', '-');
    const title = html`${icon(verdict)} ${sayCount(`verdict.${name}`, findings.length)}`;
    if (verdict === 'fail') {
        return html`<section class="card verdict ${name}">
            <h3>${title}</h3>
            ${list}
        </section>`;
    }
    return html`<details class="card verdict ${name}" ?open=${verdict === 'cannot tell' && findings.length < 8}>
        <summary><h3>${title}</h3></summary>
        ${list}
    </details>`;
}

function finding(found) {
    return html`<li>
        <details class="finding">
            <summary>
                <span>${capital(found.subject)}</span>
                ${found.measured ? html`<span class="figure">${value(found.measured)}</span>` : nothing}
            </summary>
            ${found.say ? html`<p><strong>${capital(found.say)}.</strong></p>` : nothing}
            ${onTheSpot(found)} ${facts(found)} ${where(found)}
            ${found.localChanges.map((words) => html`<p class="soft">${words}</p>`)} ${differsHere(found)}
        </details>
    </li>`;
}

const value = (quantity) =>
    quantity.tape ?? (quantity.degrees !== undefined ? `${quantity.degrees}°` : (quantity.squareInches ?? quantity.found ?? quantity));

function facts(found) {
    const source = `${found.edition} ${found.clause}`;
    return html`<dl class="facts">
        ${found.measured ? html`<div><dt>${say('measured')}</dt><dd>${value(found.measured)}</dd></div>` : nothing}
        ${found.limit && !found.measured?.found ? html`<div><dt>${say('limit')}</dt><dd>${found.limit.bound} ${value(found.limit.value)}</dd></div>` : nothing}
        ${found.place ? html`<div><dt>${say('where')}</dt><dd>${found.place}</dd></div>` : nothing}
        <div><dt>${say('clause')}</dt><dd>${source}${found.caution ? html` <em>${found.caution}</em>` : nothing}</dd></div>
    </dl>`;
}

/** What the rule waits for, to be answered here. */
function onTheSpot(found) {
    if (found.verdict !== 'cannot tell' || !found.ask) return nothing;
    const field = first(found.ask);
    return html`<div class="buttons">
        <button class="main" @click=${() => open(field)}>${say('answer', { what: fullTitle(field) })}</button>
    </div>`;
}

/** A local limit begins as a copy of the printed one; who says so is asked for at once. */
function differsHere(found) {
    if (!found.limit || found.limit.value.found || found.localChanges.length) return nothing;
    return html`<div class="buttons"><button @click=${() => change(found)}>${say('differs-here')}</button></div>`;
}

function change(found) {
    const item = `local limits > ${(valueOf('local limits') ?? []).length + 1}`;
    write(item, { rule: found.rule, clause: found.clause, limit: written(found.limit.value) });
    open(`${item} > said by`);
}

/** A quantity as a limit is written in a job. */
function written(quantity) {
    if (quantity.exact) return quantity.exact.replace(/ in$/, '"');
    if (quantity.degrees !== undefined) return `${quantity.degrees} degrees`;
    return quantity.squareInches === undefined ? String(quantity) : `${quantity.squareInches} sq in`;
}

function first(field) {
    const line = state.form.line(field);
    return isOne(line) || line.lead || line.kind !== 'group' ? field : first(`${field} > ${line.lines[0].name}`);
}

function where(found) {
    const picture = state.answer.pictures.find((each) => each.id === 'stair');
    const place = picture?.places.find((each) => each.finding === found.index);
    return place ? detail(picture, place, `${found.rule} ${found.index}`) : nothing;
}
