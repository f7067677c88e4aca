/** The crew's other devices: letting one in, and shutting one out. */
import { html, nothing } from '../lib/lit-html.js';
import { unsafeHTML } from '../lib/directives/unsafe-html.js';
import { icon } from '../pieces/icons.js';
import { over } from '../pieces/over.js';
import * as server from '../server.js';
import { change, state } from '../state.js';
import { say } from '../words.js';

const close = () => change({ dialog: null });

export function crewSheet() {
    const { network, devices, code } = state.dialog;
    return over({ name: 'crew', closed: close }, html`
        <div class="over-head">
            <h2 id="over-title">${say('crew')}</h2>
            <button class="plain" @click=${close} aria-label=${say('close')}>${icon('close')}</button>
        </div>
        <p class="alarm">${network.statement}</p>
        ${network.shared && devices ? html`<button class="main" @click=${newCode}>${say('new-code')}</button>` : nothing}
        ${code ? pairing(code) : nothing} ${devices?.length ? list(devices) : nothing}
    `);
}

const pairing = (code) => html`<div class="pairing">
    <figure class="qr">${unsafeHTML(code.svg)}</figure>
    <div class="stack">
        <p>${say('pair-how', { address: code.address })}</p>
        <p class="huge-code">${code.code}</p>
    </div>
</div>`;

const list = (devices) => html`<ul class="card">
    ${devices.map(
        (device) => html`<li class="device">
            <span>${device.name}</span>
            <button @click=${() => revoke(device)}>${say('revoke')}</button>
        </li>`,
    )}
</ul>`;

async function newCode() {
    change({ dialog: { ...state.dialog, code: await server.pairingCode() } });
}

async function revoke(device) {
    await server.revoke(device.id);
    const { devices } = await server.devices();
    change({ dialog: { ...state.dialog, devices } });
}
