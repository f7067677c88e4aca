/** A drawing to look at closely: wheel, drag and pinch, keys and buttons; a tap on a dimension asks for its measure. */
import { AsyncDirective, directive } from '../lib/async-directive.js';
import { html } from '../lib/lit-html.js';
import { unsafeHTML } from '../lib/directives/unsafe-html.js';
import { keyed } from '../lib/directives/keyed.js';
import { say } from '../words.js';
import { open } from './row.js';
import { Lens } from './lens.js';

class Looked extends AsyncDirective {
    update(part) {
        this.lens ??= new Lens(part.element, tapped);
        queueMicrotask(() => this.lens.show(part.element.querySelector('svg')));
    }

    disconnected() {
        this.lens = undefined;
    }
}

const looked = directive(Looked);

function tapped(target) {
    const field = target.closest('[data-field]')?.dataset.field;
    if (field) open(field);
}

export const drawing = (picture, { stale = false } = {}) => html`<figure class="drawing close ${stale ? 'stale' : ''}">
    <div class="lens" ${looked()}>${unsafeHTML(picture.svg)}</div>
    <div class="lens-keys">
        <button data-lens="in" aria-label=${say('closer')}>+</button>
        <button data-lens="out" aria-label=${say('farther')}>−</button>
        <button data-lens="all" aria-label=${say('whole-drawing')}>⤢</button>
    </div>
</figure>`;

/** A part of a drawing, with a frame round a place on it. */
export function detail(picture, { x, y, width, height }, name) {
    const side = Math.max(width, height, 24) * 1.6;
    const box = [x + width / 2 - side / 2, y + height / 2 - side * 0.35, side, side * 0.7];
    const framed = picture.svg
        .replace(/viewBox="[^"]*"/, `viewBox="${box.join(' ')}"`)
        .replace(/ (width|height)="[^"]*mm"/g, '')
        .replace(/<\/svg>\s*$/, `<rect class="here" x="${x - 1}" y="${y - 1}" width="${width + 2}" height="${height + 2}" rx="1"/></svg>`);
    return keyed(name, html`<figure class="drawing detail" aria-hidden="true">${unsafeHTML(framed)}</figure>`);
}
