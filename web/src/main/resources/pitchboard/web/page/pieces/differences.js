/** Lines that differ: before and after. */
import { html } from '../lib/lit-html.js';
import { say } from '../words.js';
import { fullTitle } from './row.js';

export const differences = (all) => html`<ul class="differences">
    ${all.map(
        ({ field, before, after }) => html`<li>
            <span>${fullTitle(field)}</span>
            <span><del>${before ?? say('nothing')}</del> → <ins>${after ?? say('nothing')}</ins></span>
        </li>`,
    )}
</ul>`;
