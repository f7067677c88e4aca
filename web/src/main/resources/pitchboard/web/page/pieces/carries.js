/** Whether it carries: each check with the share that is used and its factors, and what would help. */
import { html, nothing } from '../lib/lit-html.js';
import { icon } from './icons.js';
import { capital } from './row.js';
import { secondLook } from './look.js';
import { say } from '../words.js';

export function carries(strength) {
    return html`<section class="card verdict ${strength.failing ? 'fail' : ''}">
        <h3>${icon(strength.failing ? 'fail' : 'pass')} ${say(strength.failing ? 'carries.not' : 'carries')}</h3>
        <ul>
            ${strength.findings.map(check)}
        </ul>
        ${secondLook()}
        ${strength.waysOut.length ? waysOut(strength.waysOut) : nothing}
        <details>
            <summary>${say('carries.rests-on')}</summary>
            <p class="soft">${strength.method}</p>
            ${strength.assumptions.map((words) => html`<p class="soft">${words}</p>`)}
            ${strength.cautions.map((each) => html`<p class="soft">${each.words} <em>${each.source}</em></p>`)}
        </details>
        <p class="caution">${strength.whoseWord}</p>
    </section>`;
}

function check(found) {
    return html`<li>
        <details class="finding">
            <summary>
                <span>${icon(found.verdict)} ${capital(found.subject)}</span>
                ${found.ratio === null ? nothing : html`<span class="figure">${share(found.ratio)}</span>`}
            </summary>
            <p>${capital(found.words)}.</p>
            ${found.say && found.say !== found.words ? html`<p><strong>${capital(found.say)}.</strong></p>` : nothing}
            ${found.governing ? html`<p class="soft">${say('carries.under', { what: found.governing })}</p>` : nothing}
            ${found.factors.map((each) => html`<p class="soft">${each.symbol} ${each.value}, ${each.name}: ${each.because}</p>`)}
            <p class="soft">${found.source}${found.caution ? html` <em>${found.caution}</em>` : nothing}</p>
        </details>
    </li>`;
}

const share = (ratio) => `${Math.round(ratio * 100)} %`;

function waysOut(ways) {
    return html`<details open>
        <summary>${say('carries.ways-out')}</summary>
        <ul>
            ${ways.map((way) => html`<li><p>${icon(way.helps ? 'pass' : 'fail')} ${capital(way.what)}: ${share(way.ratio)}. <span class="soft">${capital(way.then)}.</span></p></li>`)}
        </ul>
    </details>`;
}
