/**
 * A new job: nothing is measured yet; what is wanted begins as a plain outdoor stair that can be changed line by line.
 * Sizes of boards as they measure; common practice, no source.
 */
const INCHES = {
    units: 'inches',
    paper: 'letter',
    rulebook: 'IRC 2021',
    wanted: {
        head: 'one down',
        'head fixing': { kind: 'hanger board', thickness: '1 1/2"', height: '5 1/2"' },
        foot: { kind: 'sole board', thickness: '1 1/2"', width: '11 1/4"' },
        width: '40"',
        treads: { boards: '2', width: '5 1/2"', gap: '1/4"', thickness: '1 1/2"' },
        risers: { kind: 'boards', thickness: '3/4"' },
        nosing: { kind: 'rounded', radius: '3/8"' },
        stringers: { stock: '2x12', depth: '11 1/4"', thickness: '1 1/2"', count: '3' },
        handrail: { sides: 'right' },
        guard: { wanted: 'yes' },
        steps: { 'number of risers': 'free' },
    },
};

export const newJob = (name) => ({
    job: name,
    date: new Date().toLocaleDateString('en-GB', { day: 'numeric', month: 'long', year: 'numeric' }),
    ...INCHES,
    measured: { header: {} },
});
