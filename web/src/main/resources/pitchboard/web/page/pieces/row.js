/** One line of the job as a row to tap: its name, what is written, and whether something is wrong with it. */
import { textOf, valueOf } from '../desk.js';
import { steps } from '../fields.js';
import { html, nothing } from '../lib/lit-html.js';
import { isNeeded, problemsOf } from '../missing.js';
import { change, state } from '../state.js';
import { say } from '../words.js';

/** The name of a line as a person says it. */
export const titleOf = (field) => capital(steps(field).filter((step) => !/^\d+$/.test(step)).at(-1));
export const capital = (words) => quoted(words.charAt(0).toUpperCase() + words.slice(1));
/** What the engine sets apart with ticks stands between quotation marks. */
export const quoted = (words) => words.replace(/`([^`]*)`/g, '“$1”');

/** With the group it stands in, where one is not enough to know it by. */
export function fullTitle(field) {
    const [, ...inner] = steps(field).filter((step) => !/^\d+$/.test(step));
    return inner.length === 0 ? titleOf(field) : capital(inner.join(', '));
}

export const open = (field) => change({ asking: { field, before: state.open.job } });

export function row(field, title = titleOf(field)) {
    const problems = problemsOf(field);
    const value = textOf(field);
    const sure = valueOf(`${field} > sure`);
    return html`<li>
        <button class="row ${problems.length ? 'wrong' : ''}" data-field=${field} @click=${() => open(field)}>
            <span class="row-name">${title}</span>
            <span class="row-value">${value ?? unwritten(field)}</span>
            ${sure && sure !== 'measured' ? html`<span class="row-sure">${sure}</span>` : nothing}
            ${problems.map((problem) => html`<span class="row-problem">${quoted(problem.words)}</span>`)}
        </button>
    </li>`;
}

const unwritten = (field) =>
    isNeeded(field)
        ? html`<span class="to-measure">${say('to-measure')}</span>`
        : html`<span class="soft">${say('left-out')}</span>`;

/** The rows of a group's lines, those of a group inside it behind its own name. */
export function rows(field) {
    const line = state.form.line(field);
    return line.lines.filter((inner) => inner.name !== 'sure').map((inner) => rowsOf(`${field} > ${inner.name}`, inner));
}

/** A line that is asked about as one: a single value, or a measurement with how sure it is. */
export const isOne = (line) => line.lines.length === 0 || line.lead === 'length';

function rowsOf(field, line) {
    if (isOne(line)) return row(field);
    if (line.kind === 'list') return nothing;
    return [row(field), ...line.lines.filter((inner) => inner.name !== line.lead && isShown(field, inner)).map((inner) => row(`${field} > ${inner.name}`, `${titleOf(field)}, ${inner.name}`))];
}

/** A line that belongs to one kind only is shown when it is needed or filled. */
function isShown(field, line) {
    const inner = `${field} > ${line.name}`;
    return valueOf(inner) !== undefined || isNeeded(inner) || !belongsToOneKind(line);
}

/** Said by the form of lines such as the thickness of a sole board, which no other foot has. */
export const belongsToOneKind = (line) => line.leftOut.startsWith('with ');
