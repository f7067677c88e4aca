/** Every stair there could be: rise against run, a dot for each, to be tapped. */
import { choose } from '../desk.js';
import { html, svg } from '../lib/lit-html.js';
import { state } from '../state.js';
import { say } from '../words.js';

const WIDTH = 340;
const HEIGHT = 240;
const LEFT = 46;
const BOTTOM = 34;
const EDGE = 12;

export function dots() {
    const all = (state.answer.dots ?? []).filter((dot) => dot.chosen || isWalkable(dot));
    if (all.length === 0) return html``;
    const across = scale(all.map((dot) => dot.run.mm), LEFT + EDGE, WIDTH - EDGE);
    const up = scale(all.map((dot) => dot.risers), EDGE, HEIGHT - BOTTOM - EDGE);
    const at = (dot) => ({ x: across(dot.run.mm), y: up(dot.risers) });
    return html`<figure class="card dots">
        <h3>${say('all-stairs')}</h3>
        <svg
            viewBox="0 0 ${WIDTH} ${HEIGHT}"
            role="img"
            aria-label=${summary(all)}
            @click=${(event) => tap(event, all, at)}
        >
            ${axes(all, across, up)} ${[...all].sort(byRank).map((dot) => spot(dot, at(dot)))}
        </svg>
        <figcaption class="key">
            ${['chosen', 'best', 'allowed', 'tight', 'against'].map(
                (kind) => html`<span><svg viewBox="-6 -6 12 12" width="18" height="18" aria-hidden="true">${sign(kind)}</svg>${say(`dot.${kind}`)}</span>`,
            )}
        </figcaption>
    </figure>`;
}

/** Nobody climbs steps beyond these; thousands of dots would hide those that matter. */
const isWalkable = (dot) => dot.rise.mm > 110 && dot.rise.mm < 260;

/** From the smallest and largest to a place on the picture. */
function scale(values, from, to) {
    const least = Math.min(...values);
    const room = Math.max(...values) - least || 1;
    return (value) => from + ((value - least) / room) * (to - from);
}

function kindOf(dot) {
    if (dot.chosen) return 'chosen';
    if (!dot.allowed) return 'against';
    if (!dot.fits) return 'tight';
    return dot.comfortable ? 'best' : 'allowed';
}

const RANKS = ['against', 'tight', 'allowed', 'best', 'chosen'];
const byRank = (one, other) => RANKS.indexOf(kindOf(one)) - RANKS.indexOf(kindOf(other));

/** Each kind has a shape of its own: no one has to tell colours apart. */
function sign(kind) {
    return {
        chosen: svg`<circle class="dot-chosen" r="5.5" /><circle class="dot-best" r="2.5" />`,
        best: svg`<circle class="dot-best" r="3.4" />`,
        allowed: svg`<circle class="dot-allowed" r="3.2" />`,
        tight: svg`<path class="dot-tight" d="M-2 -2h4v4h-4z" />`,
        against: svg`<path class="dot-against" d="M-1.6 0h3.2" />`,
    }[kind];
}

const spot = (dot, { x, y }) => svg`<g transform="translate(${x.toFixed(1)} ${y.toFixed(1)})">${sign(kindOf(dot))}</g>`;

function axes(all, across, up) {
    const runs = ends(all, 'run').map((dot) => dot.run);
    const rises = ends(all, 'rise').map(({ risers, rise }) => ({ risers, ...rise }));
    const floor = HEIGHT - BOTTOM;
    return svg`
        <path class="axis" d="M${LEFT} ${EDGE / 2}V${floor}H${WIDTH - 2}" />
        ${runs.map((run) => svg`<text x=${across(run.mm)} y=${floor + 15} text-anchor="middle">${run.tape}</text>`)}
        ${rises.map((rise) => svg`<text x=${LEFT - 5} y=${up(rise.risers) + 4} text-anchor="end">${rise.tape}</text>`)}
        <text x=${(LEFT + WIDTH) / 2} y=${HEIGHT - 4} text-anchor="middle">${say('axis.run')}</text>
        <text transform="translate(11 ${floor / 2}) rotate(-90)" text-anchor="middle">${say('axis.rise')}</text>
    `;
}

/** The smallest, the middle and the largest. */
function ends(all, what) {
    const sorted = [...all].sort((one, other) => one[what].mm - other[what].mm);
    return [sorted[0], sorted[sorted.length >> 1], sorted.at(-1)];
}

const summary = (all) =>
    say('dots-summary', { all: all.length, fit: all.filter((dot) => dot.allowed && dot.fits).length });

/** The dot nearest to the tap; one that can be built wins over its neighbours that cannot. */
function tap(event, all, at) {
    const frame = event.currentTarget.getBoundingClientRect();
    const x = ((event.clientX - frame.x) / frame.width) * WIDTH;
    const y = ((event.clientY - frame.y) / frame.height) * HEIGHT;
    const far = (dot) => Math.hypot(at(dot).x - x, at(dot).y - y) + (dot.allowed && dot.fits ? 0 : 8);
    choose(all.reduce((best, dot) => (far(dot) < far(best) ? dot : best)));
}
