/**
 * What this device keeps by itself, at once and without a server: the jobs that were open on it, with what was typed
 * and the version it began from. Kept in the browser's own storage, which may refuse when it is full.
 */
const JOB = 'pitchboard job ';
const SETTING = 'pitchboard setting ';

/** Whether it was kept. */
function write(name, value) {
    try {
        localStorage.setItem(name, JSON.stringify(value));
        return true;
    } catch {
        return false;
    }
}

function read(name) {
    try {
        return JSON.parse(localStorage.getItem(name)) ?? undefined;
    } catch {
        return undefined;
    }
}

/** `{id, name, version, base, job, changes, ticks}`: the job as it is on this device, and as the server's version was. */
export const keepJob = (kept) => write(JOB + kept.id, kept);
export const keptJob = (id) => read(JOB + id);
export const forgetJob = (id) => localStorage.removeItem(JOB + id);

export function keptJobs() {
    return Object.keys(localStorage)
        .filter((name) => name.startsWith(JOB))
        .map(read)
        .filter((kept) => kept !== undefined);
}

export const setting = (name, otherwise) => read(SETTING + name) ?? otherwise;
export const keepSetting = (name, value) => write(SETTING + name, value);
