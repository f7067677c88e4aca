/** What is not known yet and what it decides, and what cannot be read as it is written. */
import { find, lineName } from './fields.js';
import { state } from './state.js';

const isWritten = (field) => find(state.form, state.open.job, field) !== undefined;
const ofJob = () => state.problems.filter((problem) => problem.in === 'job');

/** `{field, decides}`, the needed ones first: `decides` holds the findings that wait for it, none when everything does. */
export function missing() {
    const asked = new Map();
    for (const finding of state.answer?.outcome.findings ?? []) {
        if (finding.verdict !== 'cannot tell' || !finding.ask) continue;
        const field = lineName(finding.ask);
        asked.set(field, [...(asked.get(field) ?? []), finding]);
    }
    return [
        ...needed().map(({ field }) => ({ field, decides: [] })),
        ...[...asked].map(([field, decides]) => ({ field, decides })),
    ];
}

const isAt = (field, problem) => problem.field === field || problem.field.startsWith(`${field} > `);

/** What must be answered before anything can be worked out. */
export const needed = () => ofJob().filter(({ field }) => !isWritten(field));

/** What is written and cannot be read. */
export const wrong = () => state.problems.filter(({ in: where, field }) => where !== 'job' || isWritten(field));

/** What is wrong with what is written in a field. */
export const problemsOf = (field) => ofJob().filter((problem) => isAt(field, problem) && isWritten(problem.field));

/** Whether a line must still be written before anything can be worked out. */
export const isNeeded = (field) => ofJob().some((problem) => problem.field === field && !isWritten(field));
