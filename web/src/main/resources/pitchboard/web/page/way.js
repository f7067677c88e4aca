/** Where one is on the page, as the address says it: `#jobs`, or `#job/ID/PLACE`. */
import { inAlong } from './along.js';
import { change, state } from './state.js';

export const PLACES = ['tape', 'stair', 'rules', 'wood', 'papers'];

const read = () => location.hash.slice(1).split('/');

/** The place the address names. */
export const place = () => (PLACES.includes(read().at(-1)) ? read().at(-1) : 'tape');

export function goTo(name) {
    change({ place: name });
    const hash = inAlong() ? `#${name}` : `#job/${state.open.id}/${name}`;
    if (location.hash !== hash) history.replaceState(null, '', hash);
    document.querySelector(`.place[data-place="${name}"]`)?.scrollTo(0, 0);
}

export const goToJob = (id) => {
    location.hash = `#job/${id}/tape`;
};
export const goToJobs = () => {
    location.hash = '#jobs';
};

/** Goes where the address says, now and whenever it changes. */
export function follow({ openJob, showJobs }) {
    const go = async () => {
        const [what, id] = read();
        if (what !== 'job') return showJobs();
        change({ place: place() });
        if (state.open?.id !== id || state.view !== 'job') await openJob(id);
    };
    addEventListener('hashchange', go);
    return go();
}
