/** One sheet, to look at closely. */
import { inAlong } from '../along.js';
import { html, nothing } from '../lib/lit-html.js';
import { drawing } from '../pieces/drawing.js';
import { icon } from '../pieces/icons.js';
import { over } from '../pieces/over.js';
import { links } from '../server.js';
import { change, state } from '../state.js';
import { say } from '../words.js';

const close = () => change({ dialog: null });

export function sheetView() {
    const sheet = state.sheets?.drawn?.[state.dialog.index];
    if (!sheet) return nothing;
    return over({ name: 'sheet', closed: close, kind: 'whole-over' }, html`
        <div class="over-head">
            <h2 id="over-title">${sheet.title}</h2>
            ${inAlong() ? nothing : html`<a class="button" href=${links.sheet(state.open.id, sheet.id)} target="_blank">${say('pdf-one')}</a>`}
            <button class="plain" @click=${close} aria-label=${say('close')}>${icon('close')}</button>
        </div>
        ${drawing(sheet)}
    `);
}
