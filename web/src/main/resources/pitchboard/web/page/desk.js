/** The job on the table: opening it, changing it, undoing. */
import { ask } from './engine.js';
import { find, put, text } from './fields.js';
import { saveSoon } from './sync.js';
import { change, state } from './state.js';
import { settle } from './working.js';

const MOST_UNDONE = 200;
let past = [];

/** Puts a job on the table: `{id, name, version, base, job, changes, ticks}`. */
export function lay(open) {
    past = [];
    change({ view: 'job', answer: null, sheets: null, problems: [], stale: false, conflict: null, asking: null, under: { books: [], told: null, of: null }, look: { told: null, of: null } });
    return settle(open);
}

export const valueOf = (field) => find(state.form, state.open.job, field);
export const textOf = (field) => text(state.form, state.open.job, field);

/** Writes a value into a field; undefined takes the line out. */
export const write = (field, value) => writeAll([[field, value]]);

/** Writes several fields as one change. */
export function writeAll(fields) {
    const job = fields.reduce((all, [field, value]) => put(state.form, all, field, value), state.open.job);
    replace(job);
}

/** Keeps to one of the stairs there could be. */
export function choose({ risers, run }) {
    writeAll([
        ['wanted > steps > number of risers', String(risers)],
        ['wanted > steps > run', run.exact.replace(/ in$/, '"')],
    ]);
}

/** Puts another text of the whole job on the table; it can be undone. */
export function replace(job) {
    if (JSON.stringify(job) === JSON.stringify(state.open.job)) return;
    past = [...past.slice(1 - MOST_UNDONE), state.open.job];
    settle({ ...state.open, job });
    saveSoon();
}

export const canUndo = () => past.length > 0;

export function undo() {
    if (!canUndo()) return;
    const job = past.pop();
    settle({ ...state.open, job });
    saveSoon();
}

/** Reads every length of the job in the other units; none changes by a hair. */
export async function convert(units) {
    const answer = await ask({ do: 'convert', job: state.open.job, units });
    if (answer.problems) change({ notice: { name: 'convert-trouble' } });
    else replace(answer.job);
}

export const units = () => (state.open?.job.units === 'millimetres' ? 'millimetres' : 'inches');
