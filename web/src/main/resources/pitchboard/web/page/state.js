/**
 * What the page shows, in one place. Nothing else is kept between two drawings of the page.
 *
 * - `view` 'jobs', 'job' or 'pair'; `place` one of the five; `theme` 'system', 'light' or 'dark'
 * - `jobs` the list: `{jobs, search, archived}`
 * - `form` the job file's form; `lessons` pictures of how to measure and of what can be chosen
 * - `open` the job on the table: `{id, name, version, base, job, changes, ticks}`
 * - `answer` the newest that the engine made of it, `stale` while something typed since cannot be read
 * - `problems` of what is typed now
 * - `costs` of the job on the table: `{of, on, prices, answer, trouble, working}`; null until somebody asks
 * - `saving` 'saved', 'waiting', 'saving', 'away', 'conflict' or 'trouble'; `conflict` both versions of what was changed twice
 * - `under` other rulebooks the stair is held against: `{books, told, of}`, what was `told` `of` which answer
 * - `look` the second look at the stringers: `{told, of}`, what was `told` `of` which answer
 * - `asking` the question that is being answered: `{field, before}`
 * - `dialog` what else lies over the page: `{name, ...}`; `notice` one line that goes away again
 */
export const state = {
    view: 'jobs',
    place: 'tape',
    theme: 'system',
    jobs: { jobs: [], search: '', archived: false },
    form: null,
    lessons: [],
    open: null,
    answer: null,
    stale: false,
    problems: [],
    under: { books: [], told: null, of: null },
    look: { told: null, of: null },
    saving: 'saved',
    conflict: null,
    costs: null,
    asking: null,
    dialog: null,
    notice: null,
    away: false,
};

let draw = () => {};
let due = false;

/** Says how the page is drawn; it is drawn once for any number of changes made together. */
export function drawWith(drawing) {
    draw = drawing;
    change({});
}

export function change(news) {
    Object.assign(state, news);
    if (due) return;
    due = true;
    requestAnimationFrame(() => {
        due = false;
        draw();
    });
}
