/** A keypad made for the tape: feet, inches and sixteenths, or millimetres. What it types is what the job file says. */
import { textOf, units, write } from '../desk.js';
import { ask } from '../engine.js';
import { html, nothing } from '../lib/lit-html.js';
import { change, state } from '../state.js';
import { say } from '../words.js';
import { fullTitle } from './row.js';

const DIGITS = ['7', '8', '9', '4', '5', '6', '1', '2', '3'];
const SIXTEENTHS = Array.from({ length: 15 }, (_, index) => fraction(index + 1, 16));

function fraction(top, below) {
    return top % 2 ? `${top}/${below}` : fraction(top / 2, below / 2);
}

let reading = { text: undefined, words: '' };

export function keypad(field) {
    const text = textOf(field) ?? '';
    const tape = state.asking?.tape ?? (/m\s*$/.test(text) ? 'millimetres' : units());
    hear(text);
    return html`<div class="keypad" data-tape=${tape}>
        <input
            class="keypad-text"
            autofocus
            inputmode="none"
            autocomplete="off"
            aria-label=${fullTitle(field)}
            aria-describedby="keypad-heard"
            .value=${text}
            @input=${(event) => write(field, event.target.value || undefined)}
        />
        <p id="keypad-heard" class="keypad-heard" role="status">${reading.words || ' '}</p>
        <div class="keys">
            ${DIGITS.map((digit) => key(field, digit))}
            ${tape === 'inches' ? key(field, "'", say('feet')) : key(field, '.', say('point'))}
            ${key(field, '0')}
            <button @click=${() => write(field, back(textOf(field) ?? '') || undefined)} aria-label=${say('back-key')}>⌫</button>
            ${tape === 'inches' ? key(field, '"', say('inches')) : key(field, ' mm', 'mm')}
            <button class="units-key" @click=${() => change({ asking: { ...state.asking, tape: other(tape) } })}>
                ${say(`keys-for.${other(tape)}`)}
            </button>
        </div>
        ${tape === 'inches' ? fractions(field, text) : nothing}
    </div>`;
}

const other = (tape) => (tape === 'inches' ? 'millimetres' : 'inches');

const key = (field, letters, name = letters) =>
    html`<button aria-label=${name} @click=${() => type(field, letters)}>${letters.trim()}</button>`;

function type(field, letters) {
    write(field, withLetters(textOf(field) ?? '', letters));
}

/** What a key adds: a space where the tape's writing wants one. */
export function withLetters(text, letters) {
    if (/^\d$/.test(letters)) return /['"m]$/.test(text) ? `${text} ${letters}` : text + letters;
    return text.replace(/\s+$/, '') + letters;
}

const FRACTION = /\s*\d+\/\d+\s*("?)$/;

/** Feet and inches with this fraction; one that stands there already makes way. */
export function withFraction(text, words) {
    const whole = text.replace(FRACTION, '').replace(/"\s*$/, '').trimEnd();
    return `${whole}${whole ? ' ' : ''}${words}"`;
}

/** Without its last key: a fraction or a unit goes as a whole. */
export function back(text) {
    if (FRACTION.test(text)) return text.replace(FRACTION, '');
    return text.replace(/(\s*mm|.)\s*$/, '');
}

function fractions(field, text) {
    return html`<div class="keys sixteenths" role="group" aria-label=${say('sixteenths')}>
        ${SIXTEENTHS.map(
            (words) =>
                html`<button aria-pressed=${text.match(/(\d+\/\d+)"?$/)?.[1] === words} @click=${() => write(field, withFraction(textOf(field) ?? '', words))}>
                    ${words}
                </button>`,
        )}
    </div>`;
}

/** Says back what the tape text means in both units, as soon as the engine has read it. */
async function hear(text) {
    if (reading.text === text) return;
    reading = { text, words: '' };
    if (!text) return;
    const heard = await ask({ do: 'length', text, units: units() });
    if (reading.text !== text) return;
    reading = { text, words: heard.problems ? '' : `${heard.inches} = ${heard.millimetres}` };
    change({});
}
