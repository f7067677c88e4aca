/** The server's API, as docs/page.md describes it. */
export class Refused extends Error {
    constructor(status, body) {
        super(body.problems?.map((problem) => problem.words).join(' ') || `the server answered ${status}`);
        this.status = status;
        this.body = body;
    }
}

/** No answer: no signal, or the server is not running. */
export class Unreachable extends Error {}

async function send(method, path, body) {
    let response;
    try {
        response = await fetch(`/api/${path}`, {
            method,
            headers: body === undefined ? {} : { 'Content-Type': 'application/json' },
            body: body === undefined ? undefined : JSON.stringify(body),
            signal: AbortSignal.timeout(10_000),
        });
    } catch (trouble) {
        throw new Unreachable(trouble.message);
    }
    const text = await response.text();
    const answer = text.startsWith('{') ? JSON.parse(text) : {};
    if (!response.ok) throw new Refused(response.status, answer);
    return answer;
}

const job = (id, rest = '') => `jobs/${encodeURIComponent(id)}${rest}`;

export const jobs = ({ search = '', archived = false } = {}) =>
    send('GET', `jobs?search=${encodeURIComponent(search)}${archived ? '&archived=yes' : ''}`);
export const create = (from) => send('POST', 'jobs', from);
export const open = (id) => send('GET', job(id));
export const save = (id, draft) => send('PUT', job(id), draft);
export const copy = (id) => send('POST', job(id, '/copy'), {});
export const archive = (id, archived) => send('POST', job(id, '/archive'), { archived });
export const versions = (id) => send('GET', job(id, '/versions'));
export const version = (id, number) => send('GET', job(id, `/versions/${number}`));
export const restore = (id, number) => send('POST', job(id, '/restore'), { version: number });
export const ticks = (id) => send('GET', job(id, '/ticks'));
export const tick = (id, name, done) => send('PUT', job(id, '/ticks'), { tick: name, done });
export const prices = () => send('GET', 'prices');
export const keepPrices = (what, file) => send('PUT', `prices/${what}`, { file });
export const costs = (id, on) => send('GET', job(id, `/costs?on=${encodeURIComponent(on)}`));
export const backup = () => send('POST', 'backup', {});
export const network = () => send('GET', 'network');
export const pairingCode = () => send('POST', 'network/code', {});
export const pair = (code, name) => send('POST', 'pair', { code, name });
export const devices = () => send('GET', 'devices');
export const revoke = (id) => send('DELETE', `devices/${encodeURIComponent(id)}`);

export const links = {
    file: (id) => `/api/${job(id, '/file')}`,
    papers: (id) => `/api/${job(id, '/papers.pdf')}`,
    sheet: (id, sheet) => `/api/${job(id, `/papers/${encodeURIComponent(sheet)}.pdf`)}`,
    priced: (id, which, on) => `/api/${job(id, `/${which}?on=${encodeURIComponent(on)}`)}`,
    along: (id) => `/api/${job(id, '/along.html')}`,
    picture: (id) => `/api/${job(id, '/picture.svg')}`,
};

/** Calls back for what others save, until the page is left; opens again by itself after a break. */
export function listen({ saved, ticked, listed, opened, broken }) {
    const live = new EventSource('/api/live');
    const on = (name, heard) => live.addEventListener(name, (event) => heard(JSON.parse(event.data)));
    on('saved', saved);
    on('ticked', ticked);
    on('listed', listed);
    live.onopen = opened;
    live.onerror = broken;
}
