/** Reads the marks to the one with the pencil: one at a time, as large as the screen allows, aloud when asked. */
import { Directive, directive } from '../lib/directive.js';
import { html, nothing } from '../lib/lit-html.js';
import { unsafeHTML } from '../lib/directives/unsafe-html.js';
import { inWords } from '../aloud.js';
import { setting, keepSetting } from '../keep.js';
import { marks, tickName } from '../marks.js';
import { icon } from '../pieces/icons.js';
import { over } from '../pieces/over.js';
import { change, state } from '../state.js';
import { tick } from '../ticks.js';
import { say } from '../words.js';

const close = () => {
    globalThis.speechSynthesis?.cancel();
    change({ dialog: null });
};

export function readerSheet() {
    const all = marks();
    const step = Math.min(state.dialog.step, all.length - 1);
    const mark = all[step];
    return over({ name: 'reader', closed: close, kind: 'whole-over' }, html`
        <div class="over-head">
            <h2 id="over-title">${say('mark-of', { number: step + 1, all: all.length })}</h2>
            ${'speechSynthesis' in globalThis
                ? html`<button aria-pressed=${isAloud()} @click=${() => turnAloud(mark)}>${say('aloud')}</button>`
                : nothing}
            <button class="plain" @click=${close} aria-label=${say('close')}>${icon('close')}</button>
        </div>
        ${lit(mark)}
        <div class="huge" role="status">
            <span>${mark.name}</span>
            <strong>${mark.at}</strong>
        </div>
        <div class="reader-keys">
            <button @click=${() => go(step - 1, all)} ?disabled=${step === 0}>${say('before')}</button>
            <button class="main" @click=${() => done(step, all)}>${say(step === all.length - 1 ? 'marked-last' : 'marked-next')}</button>
        </div>
    `);
}

const isAloud = () => setting('aloud', false);

function turnAloud(mark) {
    keepSetting('aloud', !isAloud());
    speak(mark);
    change({});
}

function go(step, all) {
    change({ dialog: { name: 'reader', step } });
    speak(all[step]);
}

function done(step, all) {
    tick(tickName(all[step]), true);
    step === all.length - 1 ? close() : go(step + 1, all);
}

function speak(mark) {
    const voice = globalThis.speechSynthesis;
    voice?.cancel();
    if (isAloud()) voice?.speak(new SpeechSynthesisUtterance(`${mark.name}. ${inWords(mark.at)}.`));
}

/** The stringer with this mark lit, cut to the part around it. */
function lit(mark) {
    const picture = state.answer.pictures.find((each) => each.id === 'stringer');
    if (!picture) return nothing;
    const svg = picture.svg.replace(`data-mark="${mark.key}"`, `data-mark="${mark.key}" data-lit="yes"`);
    return html`<figure class="drawing" aria-hidden="true"><div class="sideways" ${toLit(mark.key)}>${unsafeHTML(svg)}</div></figure>`;
}

/** Brings the lit mark to the middle. */
class ToLit extends Directive {
    update(part, [key]) {
        if (this.key === key) return;
        this.key = key;
        requestAnimationFrame(() =>
            part.element.querySelector('[data-lit]')?.scrollIntoView({ inline: 'center', block: 'nearest' }),
        );
    }
}

const toLit = directive(ToLit);
