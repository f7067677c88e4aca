/** What a device sees that the crew has not let in yet. */
import { html } from '../lib/lit-html.js';
import * as server from '../server.js';
import { change } from '../state.js';
import { say } from '../words.js';

export const pairPlace = () => html`<form class="stack pair" @submit=${pair}>
    <h2>${say('pair')}</h2>
    <p>${say('pair-why')}</p>
    <label>${say('pair-code')}<input name="code" required autocomplete="one-time-code" autocapitalize="characters" .value=${codeInAddress()} /></label>
    <label>${say('pair-name')}<input name="name" required maxlength="40" /></label>
    <button class="main wide">${say('pair-now')}</button>
</form>`;

/** The square code leads to an address that holds the letters. */
const codeInAddress = () => location.hash.match(/^#pair\/(\w+)$/)?.[1] ?? '';

async function pair(event) {
    event.preventDefault();
    const { code, name } = Object.fromEntries(new FormData(event.target));
    try {
        await server.pair(code.trim().toUpperCase(), name.trim());
        location.hash = '#jobs';
        location.reload();
    } catch (trouble) {
        change({ notice: { name: 'pair-trouble', trouble: trouble.message } });
    }
}
