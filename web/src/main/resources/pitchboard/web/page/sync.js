/**
 * Saving: what is on the table goes to the server by itself, and what others saved comes in. What two people changed in
 * different lines is put together; where both changed the same line, both are shown and a person decides.
 */
import { ask } from './engine.js';
import { inAlong } from './along.js';
import { keepJob } from './keep.js';
import * as server from './server.js';
import { change, state } from './state.js';
import { sendTicks } from './ticks.js';
import { settle } from './working.js';

const AFTER_TYPING = 900;
const NEXT_TRY = 5_000;
let timer;
let busy = null;

const same = (one, other) => JSON.stringify(one) === JSON.stringify(other);
export const isSaved = (open) => same(open.job, open.base);

export function saveSoon(wait = AFTER_TYPING) {
    clearTimeout(timer);
    if (inAlong()) {
        change({ saving: isSaved(state.open) ? 'saved' : 'along' });
        return;
    }
    if (!state.open || isSaved(state.open)) {
        if (state.saving === 'waiting') change({ saving: 'saved' });
        return;
    }
    if (state.saving !== 'away') change({ saving: 'waiting' });
    timer = setTimeout(save, wait);
}

/** Saves what is on the table. One save at a time: a second one waits for the first. */
export async function save() {
    clearTimeout(timer);
    if (busy) {
        await busy;
        return saveSoon(0);
    }
    busy = attempt();
    try {
        await busy;
    } finally {
        busy = null;
    }
}

/** Saves all that is on the table, with what was changed while an earlier save was under way; tells whether it did. */
export async function saveAll() {
    for (let saves = 0; saves < 2 && !isSaved(state.open); saves++) await (busy ?? save());
    return isSaved(state.open);
}

async function attempt() {
    const open = state.open;
    if (!open || isSaved(open) || state.conflict || inAlong()) return;
    if (isBeingTyped()) return saveSoon();
    change({ saving: state.saving === 'away' ? 'away' : 'saving' });
    try {
        const { version } = await server.save(open.id, { base: open.version, job: open.job, changes: open.changes });
        arrived(open, version);
    } catch (trouble) {
        await failed(open, trouble);
    }
}

/** A line that is half typed is nobody else's business yet. */
function isBeingTyped() {
    return state.asking !== null && state.problems.some((problem) => problem.field === state.asking.field);
}

function arrived(saved, version) {
    if (state.open?.id !== saved.id) return;
    const open = { ...state.open, version, base: saved.job };
    keepJob(open);
    change({ open, saving: 'saved', away: false });
    saveSoon();
}

async function failed(open, trouble) {
    if (trouble instanceof server.Unreachable) {
        change({ saving: 'away', away: true });
        timer = setTimeout(save, NEXT_TRY);
    } else if (trouble.status === 409) {
        await merge(open, trouble.body.job, trouble.body.version);
    } else {
        change({ saving: 'trouble', notice: { name: 'save-trouble', trouble: trouble.message } });
    }
}

/** Puts what the server has together with what is on the table. */
async function merge(open, theirs, version) {
    const merged = await ask({ do: 'merge', base: open.base, mine: state.open.job, theirs });
    if (state.open?.id !== open.id) return;
    if (merged.conflicts.length > 0) {
        change({ saving: 'conflict', conflict: { ...merged, theirs, version } });
        return;
    }
    takeOver(merged.job, theirs, version);
    if (merged.taken.length > 0) change({ notice: { name: 'merged', count: merged.taken.length } });
}

function takeOver(job, theirs, version) {
    settle({ ...state.open, job, base: theirs, version });
    change({ saving: 'saved', conflict: null });
    saveSoon(0);
}

/** A person decided: the whole job as it is to be. */
export function decide(job) {
    takeOver(job, state.conflict.theirs, state.conflict.version);
}

/** Another device saved a version. */
export async function heardSaved({ id, version }) {
    if (busy) await busy.catch(() => {});
    if (state.open?.id !== id || state.open.version >= version || state.conflict) return;
    const newest = await server.open(id);
    if (state.open?.id !== id || state.open.version >= newest.version) return;
    if (isSaved(state.open)) {
        settle({ ...state.open, job: newest.job, base: newest.job, changes: newest.changes, version: newest.version });
        change({ notice: { name: 'changed-elsewhere' } });
    } else {
        await merge(state.open, newest.job, newest.version);
    }
}

/** The server can be reached again. */
export async function heardOpened() {
    const wasAway = state.away;
    change({ away: false });
    if (!state.open) return;
    await sendTicks();
    if (!isSaved(state.open)) saveSoon(0);
    else if (wasAway) await heardSaved({ id: state.open.id, version: Infinity });
    if (isSaved(state.open)) change({ saving: 'saved' });
}

export const heardBroken = () => change({ away: true });
