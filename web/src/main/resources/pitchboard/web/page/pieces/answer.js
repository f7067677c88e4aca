/** The sheet on which one question is answered: how to measure it, the answer, how sure, and what it decides. */
import { replace, textOf, units, valueOf, write, writeAll } from '../desk.js';
import { html, nothing } from '../lib/lit-html.js';
import { unsafeHTML } from '../lib/directives/unsafe-html.js';
import { problemsOf } from '../missing.js';
import { change, state } from '../state.js';
import { saveSoon } from '../sync.js';
import { say } from '../words.js';
import { otherGround } from './ground.js';
import { icon } from './icons.js';
import { keypad } from './keypad.js';
import { over } from './over.js';
import { belongsToOneKind, capital, fullTitle, quoted } from './row.js';

export function answerSheet() {
    const { field } = state.asking;
    const line = state.form.line(field);
    return over({ name: 'answer', closed: close }, html`
        <div class="over-head">
            <h2 id="over-title">${fullTitle(field)}</h2>
            <button class="plain" @click=${cancel} aria-label=${say('cancel')}>${icon('close')}</button>
        </div>
        <div class="lesson">${lesson(field)}<p>${capital(line.meaning)}.</p></div>
        ${editor(field, line)} ${instead(field, line)} ${otherGround(field)} ${sure(field, line)} ${decides(field)}
        <div class="buttons">
            <button class="main wide" @click=${close}>${say('done')}</button>
            ${line.needed || textOf(field) === undefined
                ? nothing
                : html`<button @click=${() => write(field, undefined)}>${say('leave-out')}</button>`}
        </div>
    `);
}

function close() {
    change({ asking: null });
    saveSoon(0);
}

function cancel() {
    replace(state.asking.before);
    close();
}

export function lesson(field, choice = null) {
    const name = state.form.line(field)?.field;
    const found = state.lessons.find((each) => each.field === name && each.choice === choice);
    return found ? html`<figure class="drawing" aria-hidden="true">${unsafeHTML(found.svg)}</figure>` : nothing;
}

const innermost = (line) => (line.lead ? state.form.line(`${line.field} > ${line.lead}`) : line);

/** The way to give an answer that fits its kind. */
export function editor(field, line = state.form.line(field)) {
    const asked = innermost(line);
    const at = asked === line ? field : `${field} > ${line.lead}`;
    if (asked.kind === 'choice' || asked.kind === 'graduation') return choices(at, asked, field);
    if (asked.kind === 'length') return [keypad(field, at), wrong(field)];
    if (asked.kind === 'count') return [counter(field), wrong(field)];
    return [words(field, asked), wrong(field)];
}

const wrong = (field) =>
    html`<p class="wrong-words" role="status">${problemsOf(field).map((problem) => html`<span>${quoted(problem.words)}</span>`)}</p>`;

function choices(at, asked, field) {
    const chosen = textOf(field);
    return html`<fieldset class="checks">
        <legend class="unseen">${fullTitle(field)}</legend>
        ${offered(asked).map(
            (choice) => html`<label class="check">
                <input type="radio" name=${at} value=${choice} .checked=${choice === chosen} @change=${() => choose(at, field, choice)} />
                ${lesson(at, choice)}<span>${capital(choice)}</span>
            </label>`,
        )}
    </fieldset>`;
}

/** Lines of the tape are offered in the units of the job only. */
const offered = ({ kind, choices }) =>
    kind === 'graduation' ? choices.filter((choice) => choice.endsWith('mm') === (units() === 'millimetres')) : choices;

/** Another kind has other sizes: those of the kind before it would be refused. */
function choose(at, field, choice) {
    const line = state.form.line(field);
    if (at === field) return write(field, choice);
    const strangers = line.lines.filter(belongsToOneKind);
    writeAll([...strangers.map((inner) => [`${field} > ${inner.name}`, undefined]), [at, choice]]);
}

function counter(field) {
    const value = textOf(field) ?? '';
    const step = (by) => write(field, String(Math.max(1, (parseInt(value, 10) || 0) + by)));
    return html`<div class="counter">
        <button @click=${() => step(-1)} aria-label=${say('one-less')}>−</button>
        <input autofocus inputmode="numeric" aria-label=${fullTitle(field)} .value=${value} @input=${(event) => write(field, event.target.value)} />
        <button @click=${() => step(1)} aria-label=${say('one-more')}>+</button>
    </div>`;
}

function words(field, asked) {
    return html`<input
        autofocus
        aria-label=${fullTitle(field)}
        placeholder=${asked.kind === 'slope' ? '1 in 60' : ''}
        .value=${textOf(field) ?? ''}
        @input=${(event) => write(field, event.target.value || undefined)}
    />`;
}

function instead(field, line) {
    const asked = innermost(line);
    const said = [...new Set([...line.instead, ...asked.instead])];
    if (said.length === 0) return nothing;
    const value = textOf(field);
    return html`<div class="buttons">
        ${said.map((word) => html`<button aria-pressed=${value === word} @click=${() => write(field, word)}>${capital(word)}</button>`)}
    </div>`;
}

function sure(field, line) {
    const asked = line.lines.find((inner) => inner.name === 'sure');
    if (!asked || textOf(field) === undefined) return nothing;
    const now = valueOf(`${field} > sure`) ?? 'measured';
    return html`<fieldset class="stack">
        <legend>${say('how-sure')}</legend>
        <div class="checks">
            ${asked.choices.map(
                (choice) => html`<label class="check">
                    <input type="radio" name="sure" .checked=${choice === now} @change=${() => write(`${field} > sure`, choice === 'measured' ? undefined : choice)} />
                    <span>${capital(choice)}</span>
                </label>`,
            )}
        </div>
    </fieldset>`;
}

function decides(field) {
    const waiting = (state.answer?.outcome.findings ?? []).filter((finding) => finding.ask === field);
    if (waiting.length === 0) return nothing;
    return html`<p class="soft">${say('decides', { what: waiting.map((finding) => finding.subject).join('; ') })}</p>`;
}
