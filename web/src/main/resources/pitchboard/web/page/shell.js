/** The frame of the page: head, the place or places, the way between them, and what lies over it. */
import { answerSheet } from './pieces/answer.js';
import { count, icon } from './pieces/icons.js';
import { conflictSheet } from './dialogs/conflict.js';
import { dialogs } from './dialogs/dialogs.js';
import { jobsPlace } from './places/jobs.js';
import { pairPlace } from './places/pair.js';
import { papersPlace } from './places/papers.js';
import { rulesPlace } from './places/rules.js';
import { stairPlace } from './places/stair.js';
import { tapePlace } from './places/tape.js';
import { woodPlace } from './places/wood.js';
import { inAlong } from './along.js';
import { canUndo, undo } from './desk.js';
import { html, nothing } from './lib/lit-html.js';
import { change, state } from './state.js';
import { goTo, goToJobs, PLACES } from './way.js';
import { say } from './words.js';

const WIDE = matchMedia('(min-width: 1100px) and (min-height: 480px)');
WIDE.addEventListener('change', () => change({}));

const DRAWN = { tape: tapePlace, stair: stairPlace, rules: rulesPlace, wood: woodPlace, papers: papersPlace };

export function shell() {
    const inJob = state.view === 'job' && state.open;
    return html`
        <div class="shell">
            ${inJob ? jobHead() : jobsHead()}
            <main class="room ${inJob && WIDE.matches ? 'three' : ''}">
                ${rooms(inJob)}
            </main>
            ${inJob ? ways() : nothing}
        </div>
        ${state.asking && inJob ? answerSheet() : nothing} ${state.conflict ? conflictSheet() : nothing}
        ${state.dialog ? dialogs[state.dialog.name]() : nothing} ${notice()}
    `;
}

function rooms(inJob) {
    if (state.view === 'pair') return section('pair', pairPlace);
    if (!state.form) return html`<div class="place">${say('loading')}</div>`;
    return inJob ? places() : section('jobs', jobsPlace);
}

function jobsHead() {
    return html`<header class="head">
        <h1>${say('name')}</h1>
        ${state.away ? html`<span class="saving away">${say('away')}</span>` : nothing}
        <button class="plain" @click=${() => change({ dialog: { name: 'settings' } })} aria-label=${say('settings')}>
            ${icon('settings')}
        </button>
    </header>`;
}

function jobHead() {
    return html`<header class="head">
        ${inAlong()
            ? nothing
            : html`<button class="plain" @click=${goToJobs} aria-label=${say('all-jobs')}>${icon('back')}</button>`}
        <h1>${state.open.name || say('unnamed')}</h1>
        <span class="saving ${state.saving}" role="status">${say(`saving.${state.saving}`)}</span>
        <button class="plain" @click=${undo} ?disabled=${!canUndo()} aria-label=${say('undo')}>${icon('undo')}</button>
        <button class="plain" @click=${() => change({ dialog: { name: 'job-menu' } })} aria-label=${say('job-menu')}>
            ${icon('more')}
        </button>
    </header>`;
}

/** On a phone the place that was chosen; side by side the tape, the stair and one of the others. */
function places() {
    if (!WIDE.matches) return section(state.place, DRAWN[state.place]);
    const third = state.place === 'tape' || state.place === 'stair' ? 'rules' : state.place;
    return ['tape', 'stair', third].map((name) => section(name, DRAWN[name]));
}

const section = (name, drawn) => html`<section
    class="place place-${name}"
    data-place=${name}
    aria-label=${say(`place.${name}`)}
    tabindex="0"
>
    ${drawn()}
</section>`;

function ways() {
    return html`<nav class="ways" aria-label=${say('places')}>
        ${PLACES.map(
            (name) => html`<button
                aria-current=${name === state.place ? 'page' : 'false'}
                @click=${() => goTo(name)}
            >
                ${icon(name)}<span>${say(`place.${name}`)}</span>${count(name)}
            </button>`,
        )}
    </nav>`;
}

function notice() {
    if (!state.notice) return nothing;
    const { name, ...values } = state.notice;
    return html`<div class="notice" role="alert">
        <span>${say(`notice.${name}`, values)}</span>
        <button @click=${() => change({ notice: null })}>${say('understood')}</button>
    </div>`;
}
