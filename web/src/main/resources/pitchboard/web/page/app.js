/** Starts the page. */
import { alongJob, inAlong } from './along.js';
import { lay, undo } from './desk.js';
import { ask } from './engine.js';
import { JobForm } from './fields.js';
import { keptJob, setting } from './keep.js';
import { render } from './lib/lit-html.js';
import { openJob, showJobs } from './library.js';
import * as server from './server.js';
import { shell } from './shell.js';
import { change, drawWith, state } from './state.js';
import { heardBroken, heardOpened, heardSaved, save } from './sync.js';
import { heardTicked } from './ticks.js';
import { useTheme } from './theme.js';
import { follow, place } from './way.js';

const root = document.getElementById('page');

async function start() {
    useTheme(setting('theme', 'system'));
    drawWith(() => render(shell(), root));
    const [{ lines }, { pictures }] = await Promise.all([ask({ do: 'questions' }), ask({ do: 'lessons' })]);
    change({ form: new JobForm(lines), lessons: pictures ?? [] });
    await (inAlong() ? openAlong() : openFromServer());
}

function openAlong() {
    const { id, version, job, changes } = alongJob();
    const kept = keptJob(id);
    const goesOn = kept && kept.version === version;
    const fresh = { id, version, base: job, job, changes, ticks: [], untold: {} };
    change({ saving: 'along', place: place() });
    return lay(goesOn ? kept : fresh);
}

async function openFromServer() {
    navigator.serviceWorker?.register('/page-worker.js', { scope: '/' }).catch(() => {});
    server.listen({
        saved: heardSaved,
        ticked: heardTicked,
        listed: () => state.view === 'jobs' && showJobs(),
        opened: heardOpened,
        broken: heardBroken,
    });
    addEventListener('online', heardOpened);
    addEventListener('pagehide', () => state.open && save());
    await follow({ openJob, showJobs });
}

addEventListener('keydown', (event) => {
    const typing = event.target.closest?.('input, dialog');
    if ((event.ctrlKey || event.metaKey) && event.key === 'z' && !typing && state.open) {
        event.preventDefault();
        undo();
    }
});
addEventListener('unhandledrejection', (event) => {
    const { reason } = event;
    if (reason?.status === 401) {
        event.preventDefault(); // a stranger is no fault of the page
        change({ view: 'pair' });
    } else change({ notice: { name: 'trouble', trouble: reason?.message ?? String(reason) } });
});

start();
