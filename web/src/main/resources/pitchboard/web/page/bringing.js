/** Takes in a file: a job file as a new job, or what was changed on a page that had been taken along. */
import { keepJob, keptJob } from './keep.js';
import { createJob } from './library.js';
import * as server from './server.js';
import { change } from './state.js';
import { goToJob } from './way.js';

export async function bringBack(file) {
    const text = await file.text();
    const back = alongFile(text);
    if (back) return takeBack(back);
    try {
        goToJob(await createJob({ file: text }));
    } catch (trouble) {
        if (!(trouble instanceof server.Refused)) throw trouble;
        change({ notice: { name: 'file-trouble', trouble: trouble.message } });
    }
}

function alongFile(text) {
    try {
        const read = JSON.parse(text);
        return read.along === 1 && typeof read.id === 'string' && typeof read.job === 'object' ? read : null;
    } catch {
        return null;
    }
}

/** Lies on this device as a change that is not saved yet; opening the job merges it like any other. */
async function takeBack({ id, version, base, job, changes, ticks }) {
    const kept = keptJob(id);
    if (kept && JSON.stringify(kept.job) !== JSON.stringify(kept.base)) {
        change({ notice: { name: 'save-first' } });
        return;
    }
    const untold = Object.fromEntries((ticks ?? []).map((name) => [name, true]));
    keepJob({ id, name: job.job ?? '', version, base, job, changes, ticks: [], untold });
    goToJob(id);
}
