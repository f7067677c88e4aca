/** What other rulebooks say of the same stair, and which risers and run all of them let through. */
import { choose } from '../desk.js';
import { ask, Cancelled } from '../engine.js';
import { html, nothing } from '../lib/lit-html.js';
import { change, state } from '../state.js';
import { say, sayCount } from '../words.js';
import { icon } from './icons.js';
import { capital } from './row.js';

const MOST_CHOICES = 4;

export function underOthers() {
    const { books, told, of } = state.under;
    if (books.length && of !== state.answer) reckon();
    const own = state.answer.outcome.rulebook;
    const others = state.form.line('rulebook').choices.filter((name) => name !== own && !books.includes(name));
    return html`<section class="card under">
        <h3>${say('under')}</h3>
        <label>
            <span class="soft">${say('under.add')}</span>
            <select @change=${(event) => add(event.target)}>
                <option value="">${say('under.choose')}</option>
                ${others.map((name) => html`<option>${name}</option>`)}
            </select>
        </label>
        ${books.map((name) => column(name, told?.books.find((each) => each.rulebook === name)))}
        ${books.length && told ? together(told.together) : nothing}
    </section>`;
}

function add(select) {
    if (select.value) hold([...state.under.books, select.value]);
    select.value = '';
}

const hold = (books) => change({ under: { ...state.under, books, of: null } });

/** Asks again whenever the stair is another one; an answer that comes too late is dropped. */
async function reckon() {
    const { books } = state.under;
    const { job, changes } = state.open;
    const of = state.answer;
    state.under.of = of;
    try {
        const told = await ask({ do: 'under', job, ...(changes ? { changes } : {}), books });
        if (state.answer === of && state.under.books === books) change({ under: { books, of, told } });
    } catch (trouble) {
        if (!(trouble instanceof Cancelled)) change({ notice: { name: 'engine-trouble', trouble: trouble.message } });
    }
}

function column(name, book) {
    const fails = book?.findings.filter((finding) => finding.verdict === 'fail') ?? [];
    return html`<details class="finding" open>
        <summary>
            <span>${book ? icon(fails.length ? 'fail' : 'pass') : nothing} ${name}</span>
        </summary>
        <p class="soft">${book ? summary(book.findings) : say('working')}</p>
        <ul>
            ${fails.map((found) => html`<li><p>${capital(found.subject)}: <strong>${capital(found.say)}.</strong> <span class="soft">${found.edition} ${found.clause}</span></p></li>`)}
        </ul>
        <div class="buttons"><button @click=${() => hold(state.under.books.filter((each) => each !== name))}>${say('under.drop', { name })}</button></div>
    </details>`;
}

const summary = (findings) =>
    ['fail', 'cannot tell', 'pass']
        .map((verdict) => [verdict.replaceAll(' ', '-'), findings.filter((finding) => finding.verdict === verdict).length])
        .filter(([, count]) => count)
        .map(([verdict, count]) => sayCount(`verdict.${verdict}`, count))
        .join(', ');

/** A stair that only wants something of rails or landings is let through: that needs no other risers. */
function together({ allowed, otherwiseAllowed }) {
    const fit = [...allowed, ...otherwiseAllowed].slice(0, MOST_CHOICES);
    if (!fit.length) return html`<p><strong>${say('under.none')}</strong></p>`;
    return html`<h4>${say('under.all')}</h4>
        <ul>
            ${fit.map((option) => html`<li><button class="row" @click=${() => choose(option)}>
                <span class="row-name">${say('option', { risers: option.risers, rise: option.rise.tape, run: option.run.tape })}</span>
            </button></li>`)}
        </ul>`;
}
