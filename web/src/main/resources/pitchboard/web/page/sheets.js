/** The sheets of the job on the table: drawn when they are looked at, printed, shared and saved as files. */
import { ask, Cancelled } from './engine.js';
import { inAlong } from './along.js';
import { links } from './server.js';
import { change, state } from './state.js';
import { isSaved } from './sync.js';

/** Draws all sheets, unless those there are show the job as it is. */
export async function drawSheets() {
    const { open, sheets, stale } = state;
    if (stale || sheets?.stopped || (sheets?.of === open.job && (sheets.drawn || sheets.drawing))) return;
    const { job, changes } = open;
    state.sheets = { of: job, drawing: true };
    try {
        const answer = await ask({ do: 'solve', job, ...(changes ? { changes } : {}), sheets: 'all' });
        if (state.sheets?.of === job) change({ sheets: { of: job, drawn: answer.sheets ?? [] } });
    } catch (trouble) {
        if (!(trouble instanceof Cancelled)) throw trouble;
    }
}

function download(name, type, content) {
    const link = document.createElement('a');
    link.href = URL.createObjectURL(new Blob([content], { type }));
    link.download = name;
    link.click();
    setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
}

const fileName = () => (state.open.name || 'stair').replace(/[^\p{L}\p{N} _-]+/gu, '').trim().slice(0, 60) || 'stair';

/** The job file as it is on the table. */
export async function saveFile() {
    const { yaml } = await ask({ do: 'write', job: state.open.job });
    download(`${fileName()}.yaml`, 'application/yaml', yaml);
}

/** What was changed in the page that was taken along, to be brought back: it knows the version it began from. */
export function saveAlong() {
    const { id, version, base, job, changes, ticks } = state.open;
    const back = { along: 1, id, version, base, job, changes, ticks };
    download(`${fileName()} brought back.json`, 'application/json', JSON.stringify(back));
    change({ notice: { name: 'along-saved' } });
}

export async function share() {
    const title = state.open.name;
    try {
        if (inAlong() || !isSaved(state.open)) {
            const { yaml } = await ask({ do: 'write', job: state.open.job });
            await navigator.share({ title, text: yaml });
        } else {
            const pdf = await (await fetch(links.papers(state.open.id))).blob();
            await navigator.share({ title, files: [new File([pdf], `${fileName()}.pdf`, { type: 'application/pdf' })] });
        }
    } catch (trouble) {
        if (trouble.name !== 'AbortError') throw trouble;
    }
}

/** Prints every sheet at its true size, each on a page of its own. */
export function printSheets() {
    const paper = document.createElement('div');
    paper.className = 'print-sheets';
    paper.innerHTML = state.sheets.drawn.map((sheet) => sheet.svg).join('');
    document.body.append(paper);
    const { width, height } = paper.firstElementChild.attributes;
    const rules = new CSSStyleSheet();
    rules.replaceSync(`@page { size: ${width.value} ${height.value}; }`);
    document.adoptedStyleSheets = [rules];
    addEventListener('afterprint', () => paper.remove(), { once: true });
    print();
}
