/** The jobs there are: on the server, and kept on this device while the server is out of reach. */
import { lay } from './desk.js';
import { keptJob, keptJobs } from './keep.js';
import * as server from './server.js';
import { change, state } from './state.js';
import { saveSoon } from './sync.js';
import { sendTicks } from './ticks.js';

export async function showJobs(news = {}) {
    const jobs = { ...state.jobs, ...news };
    change({ view: 'jobs', jobs, dialog: null, asking: null });
    try {
        const { jobs: found } = await server.jobs(jobs);
        change({ jobs: { ...state.jobs, jobs: found, kept: false }, away: false });
    } catch (trouble) {
        if (!(trouble instanceof server.Unreachable)) throw trouble;
        change({ jobs: { ...jobs, jobs: keptList(jobs.search), kept: true }, away: true });
    }
}

const keptList = (search) =>
    keptJobs()
        .filter((kept) => (kept.name ?? '').toLocaleLowerCase().includes(search.toLocaleLowerCase()))
        .map(({ id, name, version, job }) => ({ id, name, version, place: job.place ?? '' }));

/** Opens a job: as this device has it where something on it is not saved yet, else as the server has it. */
export async function openJob(id) {
    const kept = keptJob(id);
    try {
        const [newest, { ticks }] = await Promise.all([server.open(id), server.ticks(id)]);
        const mine = kept && JSON.stringify(kept.job) !== JSON.stringify(kept.base);
        const here = { ticks, untold: kept?.untold ?? {} };
        change({ saving: mine ? 'waiting' : 'saved', away: false });
        await lay(mine ? { ...kept, ...here } : { id, ...pick(newest), base: newest.job, ...here });
        await sendTicks();
        saveSoon(0);
    } catch (trouble) {
        if (!(trouble instanceof server.Unreachable) || !kept) throw trouble;
        change({ saving: 'away', away: true });
        await lay(kept);
    }
}

const pick = ({ version, job, changes }) => ({ version, job, changes });

export async function createJob(from) {
    const { id } = await server.create(from);
    return id;
}
