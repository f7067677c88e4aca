/**
 * Reads and changes a job by field. A field is the path of a line of the job file, `measured > header > depth`; the
 * pieces of a list are numbered from 1. A group may be written short, as the value of its leading line:
 * `rise: 105 3/4` says the same as `rise: { length: 105 3/4 }`.
 */
const BETWEEN = ' > ';
const isNumber = (step) => /^\d+$/.test(step);

export const steps = (field) => field.split(BETWEEN);
export const join = (...parts) => parts.filter((part) => part !== '').join(BETWEEN);
/** The line of the form that a field fills: without the numbers of list pieces. */
export const lineName = (field) => steps(field).filter((step) => !isNumber(step)).join(BETWEEN);

const isGroup = (value) => typeof value === 'object' && value !== null && !Array.isArray(value);

/** The value of a field; undefined when nothing is written there. */
export function find(form, job, field) {
    let value = job;
    const past = [];
    for (const step of steps(field)) {
        if (isNumber(step)) {
            if (Array.isArray(value)) value = value[step - 1];
            else if (step !== '1' || typeof value === 'string') return undefined;
        } else if (isGroup(value)) value = value[step];
        else if (typeof value !== 'string' || form.leadOf(past.join(BETWEEN)) !== step) return undefined;
        if (value === undefined) return undefined;
        if (!isNumber(step)) past.push(step);
    }
    return value;
}

/** The words of a field: of a group written in full, those of its leading line. */
export function text(form, job, field) {
    const value = find(form, job, field);
    if (typeof value === 'string') return value;
    const lead = form.leadOf(lineName(field));
    return isGroup(value) && lead ? value[lead] : undefined;
}

/** The job with another value in a field; with undefined the line is taken out. The job given stays as it is. */
export function put(form, job, field, value) {
    return set(form, job, [], steps(field), value);
}

function set(form, at, past, [step, ...rest], value) {
    if (isNumber(step)) {
        const items = Array.isArray(at) ? [...at] : isGroup(at) ? [at] : [];
        const item = rest.length ? set(form, items[step - 1], past, rest, value) : value;
        if (item === undefined) items.splice(step - 1, 1);
        else items[step - 1] = item;
        // A list without pieces is not written.
        return items.length ? items : undefined;
    }
    const here = past.join(BETWEEN);
    const group = isGroup(at) ? { ...at } : {};
    const lead = form.leadOf(here);
    if (typeof at === 'string' && lead && !form.isInstead(here, at)) group[lead] = at;
    const inner = rest.length
        ? set(form, group[step], [...past, step], rest, value)
        : last(form, [...past, step].join(BETWEEN), group[step], value);
    if (inner === undefined) delete group[step];
    else group[step] = inner;
    return group;
}

/** Words for a group that is written in full go to its leading line, unless they stand for the whole group. */
function last(form, line, old, value) {
    const lead = form.leadOf(line);
    const goesInside = typeof value === 'string' && isGroup(old) && lead && !form.isInstead(line, value);
    return goesInside ? { ...old, [lead]: value } : value;
}

/** The job file's form as the engine describes it, by line. */
export class JobForm {
    #lines = new Map();

    constructor(lines) {
        const add = (line) => {
            this.#lines.set(line.field, line);
            line.lines.forEach(add);
        };
        lines.forEach(add);
        this.lines = lines;
    }

    line(field) {
        return this.#lines.get(lineName(field));
    }

    leadOf(field) {
        return this.#lines.get(field)?.lead ?? undefined;
    }

    /** Whether a word stands for the whole group, as `nothing` or `free` do. */
    isInstead(field, word) {
        return this.#lines.get(field)?.instead.includes(word) ?? false;
    }
}
