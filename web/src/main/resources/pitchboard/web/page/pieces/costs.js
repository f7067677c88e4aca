/** What it costs: the price list and the rates, the day, the price with what goes into it, and the papers of it. */
import { answerNow, bring, link, lookUp, setDay, workOut } from '../costs.js';
import { html, nothing } from '../lib/lit-html.js';
import { state } from '../state.js';
import { say, sayCount } from '../words.js';
import { icon } from './icons.js';

/** @param saved makes sure that what a link shows is saved */
export function costs(saved) {
    return html`<details class="card costs" @toggle=${opened}>
        <summary>${say('costs')}</summary>
        ${state.costs?.of === state.open.id ? inside(state.costs, saved) : nothing}
    </details>`;
}

function opened(event) {
    if (event.currentTarget.open && state.costs?.of !== state.open.id) lookUp();
}

function inside(costs, saved) {
    const { prices, trouble } = costs;
    return html`
        ${trouble ? html`<p class="alarm fails" role="alert">${trouble}</p>` : nothing}
        ${kept('yard', prices?.yard)} ${kept('rates', prices?.rates)}
        ${prices?.yard && prices?.rates ? priced(costs, saved) : nothing}
        <p class="caution">${say('costs.caution')}</p>
    `;
}

function kept(what, file) {
    return html`<p>
        <strong>${say(`costs.${what}`)}</strong>
        ${file ? say('costs.kept', { name: file.name, date: file.date, currency: file.currency }) : say('costs.none')}
        <label class="button file-button">
            ${say(file ? 'costs.another' : 'costs.choose')}
            <input type="file" accept=".yaml,.yml,.json" aria-label=${say(`costs.choose-${what}`)} @change=${(event) => taken(event, what)} />
        </label>
    </p>`;
}

async function taken(event, what) {
    const [file] = event.target.files;
    event.target.value = '';
    if (file) await bring(what, file);
}

function priced({ on, working }, saved) {
    const answer = answerNow();
    return html`
        <p><label>${say('costs.day')} <input type="date" required .value=${on} @change=${(event) => event.target.value && setDay(event.target.value)} /></label></p>
        <div class="buttons">
            <button class="main" @click=${workOut} ?disabled=${working}>${say('costs.work-out')}</button>
            <a class="button" href=${link('cost.pdf')} target="_blank" @click=${saved}>${say('costs.sheet')}</a>
            <a class="button" href=${link('cost.csv')} @click=${saved} download>${say('costs.list')}</a>
            ${answer && !answer.complete ? nothing : html`<a class="button" href=${link('quote.pdf')} target="_blank" @click=${saved}>${say('costs.quote')}</a>`}
        </div>
        ${working ? html`<p role="status" class="progress"><progress></progress> ${say('costs.working')}</p>` : nothing}
        ${answer ? shown(answer) : nothing}
    `;
}

function shown({ lookFirst, missing, stale, lines, price, currency }) {
    const warn = (words) => html`<p class="alarm fails">${icon('fail')} ${words}</p>`;
    return html`
        ${price ? html`<p class="costs-price figure">${price.total} ${currency}</p>` : nothing}
        ${missing.map((words) => warn(say('costs.missing', { words })))} ${lookFirst.length ? look(lookFirst) : nothing}
        ${stale.map((words) => html`<p class="soft">${words}</p>`)}
        <table class="costs-lines">
            <caption class="soft">${say('costs.in', { currency })}</caption>
            <tbody>
                ${lines.map((line) => sum(line.what, line.cost ?? '–', line.working))}
                ${price ? total(price) : nothing}
            </tbody>
        </table>
    `;
}

const look = (cautions) => html`<details class="alarm fails">
    <summary>${icon('fail')} ${sayCount('costs.look', cautions.length)}</summary>
    <ul>${cautions.map((words) => html`<li>${words}</li>`)}</ul>
</details>`;

const total = (price) => html`
    ${['overhead', 'profit'].map((name) => sum(say(`costs.${name}`), price[name]))}
    ${price.taxes.map((tax) => sum(say('costs.tax', { kind: tax.kind }), tax.amount))}
    ${sum(say('costs.rounding'), price.rounding)}
    <tr class="total"><th scope="row">${say('costs.price')}</th><td class="figure">${price.total}</td></tr>
    ${price.payments.map((payment) => sum(say('costs.due', { due: payment.due }), payment.amount))}
`;

const sum = (what, amount, working) => html`<tr>
    <th scope="row">${what}${working ? html` <span class="soft">${working}</span>` : nothing}</th>
    <td class="figure">${amount}</td>
</tr>`;
