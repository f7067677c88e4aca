/** What the job on the table costs: prices kept on the server, and the newest that was worked out from them. */
import { links, prices, keepPrices, costs as askCosts, Refused, Unreachable } from './server.js';
import { change, state } from './state.js';
import { isSaved, saveAll } from './sync.js';

export const today = () => {
    const now = new Date();
    return new Date(now.getTime() - now.getTimezoneOffset() * 60_000).toISOString().slice(0, 10);
};

function put(news) {
    change({ costs: { on: today(), ...state.costs, ...news } });
}

async function told(work) {
    try {
        await work();
    } catch (trouble) {
        if (!(trouble instanceof Refused || trouble instanceof Unreachable)) throw trouble;
        put({ working: false, trouble: trouble.message });
    }
}

/** Asks the server which prices it has, once for every opening of a job. */
export const lookUp = () => told(async () => put({ of: state.open.id, prices: await prices(), answer: null, trouble: null }));

/** @param what `yard` or `rates` */
export const bring = (what, file) =>
    told(async () => put({ prices: await keepPrices(what, await file.text()), answer: null, trouble: null }));

export const setDay = (on) => put({ on, answer: null });

/** Works it out for what was saved; anything else is saved first. */
export const workOut = () =>
    told(async () => {
        put({ working: true, trouble: null });
        if (!isSaved(state.open)) await saveAll();
        put({ working: false, answer: await askCosts(state.open.id, state.costs.on), answers: state.open.job });
    });

/** The newest answer, as long as it is about the job as it is on the table. */
export const answerNow = () => (state.costs.answers === state.open.job ? state.costs.answer : null);

export const link = (which) => links.priced(state.open.id, which, state.costs.on);
