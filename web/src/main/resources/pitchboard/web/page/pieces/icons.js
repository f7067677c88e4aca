/** Small signs drawn with one pen, and the number of things that want attention. */
import { html, nothing, svg } from '../lib/lit-html.js';
import { missing } from '../missing.js';
import { state } from '../state.js';
import { sayCount } from '../words.js';

const SIGNS = {
    tape: svg`<path d="M4 8h16v9H4zM7 8v4M10 8v3M13 8v4M16 8v3M20 17l2 2" />`,
    stair: svg`<path d="M3 20h5v-5h5v-5h5V5h3" />`,
    rules: svg`<path d="M6 3h12v18H6zM9 9l2 2 4-4M9 16h6" />`,
    wood: svg`<path d="M2 15 16 4l4 2 2 4L8 20H3zM7 11l3 1 0 3M12 7l3 1 0 3" />`,
    papers: svg`<path d="M7 3h9l4 4v14H7zM16 3v4h4M10 12h7M10 16h7M4 6v15" />`,
    back: svg`<path d="M15 5l-7 7 7 7" />`,
    undo: svg`<path d="M8 5 4 9l4 4M4 9h10a6 6 0 0 1 0 11h-3" />`,
    more: svg`<path d="M5 12h.01M12 12h.01M19 12h.01" stroke-width="4" />`,
    settings: svg`<path d="M4 7h9M19 7h1M4 17h2M12 17h8M16 4v6M9 14v6" />`,
    close: svg`<path d="M6 6l12 12M18 6 6 18" />`,
    fail: svg`<path d="M5 5l14 14M19 5 5 19" stroke-width="3" />`,
    'cannot tell': svg`<path d="M8 9a4 4 0 1 1 6 3.4c-1.5.9-2 1.6-2 3M12 19h.01" stroke-width="2.6" />`,
    pass: svg`<path d="M4 13l5 5L20 6" stroke-width="3" />`,
    'does not apply': svg`<path d="M5 12h14" stroke-width="3" />`,
};

export const icon = (name) =>
    html`<svg
        class="icon"
        viewBox="0 0 24 24"
        width="24"
        height="24"
        fill="none"
        stroke="currentColor"
        stroke-width="1.8"
        stroke-linecap="round"
        stroke-linejoin="round"
        aria-hidden="true"
    >
        ${SIGNS[name]}
    </svg>`;

/** How many things in a place want attention. */
export function count(place) {
    const fails = state.answer?.outcome.findings?.filter((finding) => finding.verdict === 'fail').length ?? 0;
    const open = place === 'tape' ? missing().length : 0;
    if (place === 'rules' && fails > 0) return badge(fails, '', 'fails');
    if (open > 0) return badge(open, 'asks', 'missing');
    return nothing;
}

const badge = (number, kind, words) =>
    html`<span class="count ${kind}" aria-hidden="true">${number}</span
        ><span class="unseen">, ${sayCount(words, number)}</span>`;
