/** Every version that was saved, what changed since one of them, and the way back to it. */
import { ask } from '../engine.js';
import { html, nothing } from '../lib/lit-html.js';
import { icon } from '../pieces/icons.js';
import { over } from '../pieces/over.js';
import * as server from '../server.js';
import { change, state } from '../state.js';
import { heardSaved, save } from '../sync.js';
import { say, sayCount } from '../words.js';
import { differences } from '../pieces/differences.js';

const close = () => change({ dialog: null });

export function historySheet() {
    const { versions, compared } = state.dialog;
    return over({ name: 'history', closed: close }, html`
        <div class="over-head">
            <h2 id="over-title">${say('history')}</h2>
            <button class="plain" @click=${close} aria-label=${say('close')}>${icon('close')}</button>
        </div>
        <ol class="versions">
            ${versions.map((version) => entry(version, compared))}
        </ol>
    `);
}

function entry(version, compared) {
    const isOpen = compared?.version === version.version;
    return html`<li>
        <button class="row" aria-expanded=${isOpen} @click=${() => compare(version.version)}>
            <span class="row-name">${when(version.saved)}</span>
            <span class="row-value">${say('version', { number: version.version })}</span>
            <span class="row-sure">${[version.device, version.note].filter(Boolean).join(', ')}</span>
        </button>
        ${isOpen ? since(compared) : nothing}
    </li>`;
}

const when = (time) =>
    new Date(time).toLocaleString([], { weekday: 'long', day: 'numeric', month: 'long', hour: 'numeric', minute: '2-digit' });

function since({ version, found }) {
    return html`<div class="stack since">
        <p>${found.length ? sayCount('since', found.length) : say('since.none')}</p>
        ${differences(found)}
        ${found.length ? html`<button @click=${() => restore(version)}>${say('restore')}</button>` : nothing}
    </div>`;
}

async function compare(version) {
    const { job } = await server.version(state.open.id, version);
    const { differences: found } = await ask({ do: 'compare', before: job, after: state.open.job });
    change({ dialog: { ...state.dialog, compared: { version, found } } });
}

async function restore(version) {
    await save();
    const restored = await server.restore(state.open.id, version);
    await heardSaved({ id: state.open.id, version: restored.version });
    close();
}
