/** What was checked off on the wood: kept on the device at once, told to the server when it can be reached. */
import { inAlong } from './along.js';
import { keepJob } from './keep.js';
import * as server from './server.js';
import { change, state } from './state.js';

const withTick = (ticks, name, done) => [...ticks.filter((each) => each !== name), ...(done ? [name] : [])];

function keep(open) {
    keepJob(open);
    change({ open });
}

/** Checks something off, or takes the check away. */
export function tick(name, done) {
    const { open } = state;
    keep({ ...open, ticks: withTick(open.ticks, name, done), untold: { ...open.untold, [name]: done } });
    return sendTicks();
}

/** Tells the server what it does not know yet. */
export async function sendTicks() {
    const { open } = state;
    if (inAlong() || !open) return;
    let ticks = open.ticks;
    for (const [name, done] of Object.entries(open.untold)) {
        ticks = withTick(ticks, name, done);
        try {
            await server.tick(open.id, name, done);
        } catch (trouble) {
            if (trouble instanceof server.Unreachable) return;
            throw trouble;
        }
        forget(open.id, name, done);
    }
    if (state.open?.id === open.id) keep({ ...state.open, ticks: withUntold(ticks) });
}

const withUntold = (ticks) =>
    Object.entries(state.open.untold).reduce((all, [name, done]) => withTick(all, name, done), ticks);

function forget(id, name, done) {
    if (state.open?.id !== id || state.open.untold[name] !== done) return;
    const { [name]: told, ...untold } = state.open.untold;
    keep({ ...state.open, untold });
}

/** Another device checked something off. */
export function heardTicked({ id, tick: name, done }) {
    if (state.open?.id === id) keep({ ...state.open, ticks: withTick(state.open.ticks, name, done) });
}
