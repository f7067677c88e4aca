/** Works out the job on the table, again after every change. */
import { ask, Cancelled } from './engine.js';
import { keepJob } from './keep.js';
import { change, state } from './state.js';

let working = false;
let again = false;

/** Puts the job on the table as given, keeps it on this device and works it out. */
export function settle(open) {
    const named = { ...open, name: open.job.job || open.name };
    const kept = keepJob(named);
    change({ open: named, notice: kept ? state.notice : { name: 'device-full' } });
    return workOut();
}

/** Works the job out; while one answer is being made, any number of changes wait for the next. */
export async function workOut() {
    if (working) {
        again = true;
        return;
    }
    working = true;
    try {
        do {
            again = false;
            await once();
        } while (again);
    } catch (trouble) {
        if (!(trouble instanceof Cancelled)) change({ notice: { name: 'engine-trouble', trouble: trouble.message } });
    } finally {
        working = false;
    }
}

async function once() {
    const { id, job, changes } = state.open;
    const answer = await ask({
        do: 'solve',
        job,
        ...(changes ? { changes } : {}),
        pictures: ['stair', 'stringer'],
        dots: 'yes',
    });
    if (state.open?.id !== id) {
        again = true;
    } else if (answer.problems) {
        change({ problems: answer.problems, stale: state.answer !== null });
    } else {
        change({ answer, problems: [], stale: false });
    }
}
