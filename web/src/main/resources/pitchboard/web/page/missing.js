/** What is not known yet, and what it decides. */
import { lineName } from './fields.js';
import { state } from './state.js';

/** `{field, decides}`, the needed ones first: `decides` holds the rules that wait for it, none when everything does. */
export function missing() {
    const needed = state.problems
        .filter((problem) => problem.in === 'job' && problem.missing)
        .map((problem) => ({ field: problem.field, decides: [] }));
    const asked = new Map();
    for (const finding of state.answer?.outcome.findings ?? []) {
        if (finding.verdict !== 'cannot tell' || !finding.ask) continue;
        const field = lineName(finding.ask);
        asked.set(field, [...(asked.get(field) ?? []), finding]);
    }
    return [...needed, ...[...asked].map(([field, decides]) => ({ field, decides }))];
}

/** What is wrong with a field as it is typed. */
export const problemsOf = (field) =>
    state.problems.filter((problem) => problem.field === field || problem.field.startsWith(`${field} > `));
