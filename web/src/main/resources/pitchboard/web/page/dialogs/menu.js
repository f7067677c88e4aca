/** What can be done with the job as a whole. */
import { inAlong } from '../along.js';
import { convert, units } from '../desk.js';
import { html, nothing } from '../lib/lit-html.js';
import { icon } from '../pieces/icons.js';
import { over } from '../pieces/over.js';
import { saveFile } from '../sheets.js';
import * as server from '../server.js';
import { change, state } from '../state.js';
import { goToJob, goToJobs } from '../way.js';
import { say } from '../words.js';

const close = () => change({ dialog: null });

export function jobMenu() {
    return over({ name: 'menu', closed: close }, html`
        <div class="over-head">
            <h2 id="over-title">${state.open.name || say('unnamed')}</h2>
            <button class="plain" @click=${close} aria-label=${say('close')}>${icon('close')}</button>
        </div>
        <div class="menu">
            <button @click=${() => convert(units() === 'inches' ? 'millimetres' : 'inches').then(close)}>
                ${say(`in-units.${units() === 'inches' ? 'millimetres' : 'inches'}`)}
            </button>
            ${inAlong()
                ? nothing
                : html`
                      <button @click=${history}>${say('history')}</button>
                      <button @click=${copy}>${say('copy')}</button>
                      <button @click=${archive}>${say('archive')}</button>
                  `}
            <button @click=${saveFile}>${say('job-file')}</button>
            <button @click=${() => change({ dialog: { name: 'settings' } })}>${say('settings')}</button>
        </div>
    `);
}

async function history() {
    const { versions } = await server.versions(state.open.id);
    change({ dialog: { name: 'history', versions } });
}

async function copy() {
    const { id } = await server.copy(state.open.id);
    close();
    goToJob(id);
}

async function archive() {
    await server.archive(state.open.id, true);
    close();
    goToJobs();
}
