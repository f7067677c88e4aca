/** How the page looks, the crew's devices, and keeping the database safe. */
import { inAlong } from '../along.js';
import { html, nothing } from '../lib/lit-html.js';
import { icon } from '../pieces/icons.js';
import { over } from '../pieces/over.js';
import * as server from '../server.js';
import { change, state } from '../state.js';
import { useTheme } from '../theme.js';
import { say } from '../words.js';

const close = () => change({ dialog: null });

export function settingsSheet() {
    return over({ name: 'settings', closed: close }, html`
        <div class="over-head">
            <h2 id="over-title">${say('settings')}</h2>
            <button class="plain" @click=${close} aria-label=${say('close')}>${icon('close')}</button>
        </div>
        <fieldset class="stack">
            <legend>${say('theme')}</legend>
            <div class="checks">
                ${['system', 'light', 'dark'].map(
                    (theme) => html`<label class="check">
                        <input type="radio" name="theme" .checked=${state.theme === theme} @change=${() => useTheme(theme)} />
                        <span>${say(`theme.${theme}`)}</span>
                    </label>`,
                )}
            </div>
        </fieldset>
        ${inAlong()
            ? nothing
            : html`<div class="menu">
                  <button @click=${crew}>${say('crew')}</button>
                  <button @click=${backUp}>${say('back-up')}</button>
              </div>`}
        <p class="soft">${say('caution.all')}</p>
    `);
}

async function crew() {
    const network = await server.network();
    const { devices } = await server.devices().catch(() => ({ devices: null }));
    change({ dialog: { name: 'crew', network, devices } });
}

async function backUp() {
    const { file } = await server.backup();
    change({ dialog: null, notice: { name: 'backed-up', file } });
}
