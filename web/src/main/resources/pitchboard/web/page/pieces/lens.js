/** What part of a drawing is seen, by its viewBox: kept while the drawing is drawn anew, fitted when its page changes. */
const CLOSEST = 12;
const TAP = 8;
const KEYS = { '+': [1.4], '-': [1 / 1.4], ArrowLeft: [1, -1, 0], ArrowRight: [1, 1, 0], ArrowUp: [1, 0, -1], ArrowDown: [1, 0, 1] };

export class Lens {
    #pointers = new Map();
    #whole;
    #seen;

    constructor(element, tapped) {
        this.element = element;
        this.tapped = tapped;
        const on = (name, does, options) => element.addEventListener(name, does.bind(this), options);
        on('wheel', this.#wheel, { passive: false });
        on('pointerdown', this.#down);
        on('pointermove', this.#move);
        on('pointerup', this.#up);
        on('pointercancel', this.#cancel);
        on('keydown', this.#key);
        element.parentElement.addEventListener('click', (event) => this.#button(event.target.dataset.lens));
    }

    /** A drawing was put in place, perhaps the same one drawn anew. */
    show(svg) {
        if (!svg || svg === this.svg) return;
        this.svg = svg;
        const [x, y, width, height] = svg.getAttribute('viewBox').split(/[\s,]+/).map(Number);
        const whole = { x, y, width, height };
        const sameSize = this.#whole && whole.width === this.#whole.width && whole.height === this.#whole.height;
        this.#whole = whole;
        if (!sameSize || !this.#seen) this.#seen = whole;
        this.#apply();
        svg.setAttribute('role', 'group');
        svg.querySelectorAll('[data-field]').forEach(asButton);
    }

    #apply() {
        const { x, y, width, height } = this.#seen;
        this.svg.setAttribute('viewBox', `${x} ${y} ${width} ${height}`);
        this.element.classList.toggle('zoomed', width < this.#whole.width * 0.999);
    }

    /** Closer by a factor about a spot of the screen, and shifted by pixels. */
    #look(factor, at, shift = { x: 0, y: 0 }) {
        const frame = this.svg.getBoundingClientRect();
        const scale = this.#seen.width / frame.width;
        const width = Math.min(this.#whole.width, Math.max(this.#whole.width / CLOSEST, this.#seen.width / factor));
        const kept = width / this.#seen.width;
        const ax = this.#seen.x + (at.x - frame.x) * scale;
        const ay = this.#seen.y + (at.y - frame.y) * scale;
        const height = this.#seen.height * kept;
        this.#seen = {
            x: hold(ax - (ax - this.#seen.x) * kept - shift.x * scale, this.#whole.x, this.#whole.width - width),
            y: hold(ay - (ay - this.#seen.y) * kept - shift.y * scale, this.#whole.y, this.#whole.height - height),
            width,
            height,
        };
        this.#apply();
    }

    #middle() {
        const frame = this.svg.getBoundingClientRect();
        return { x: frame.x + frame.width / 2, y: frame.y + frame.height / 2 };
    }

    #wheel(event) {
        if (!event.ctrlKey && !this.element.classList.contains('zoomed')) return;
        event.preventDefault();
        this.#look(Math.exp(-event.deltaY / 400), { x: event.clientX, y: event.clientY });
    }

    #down(event) {
        this.#pointers.set(event.pointerId, { x: event.clientX, y: event.clientY, from: { x: event.clientX, y: event.clientY } });
        if (this.#pointers.size === 2) this.element.setPointerCapture(event.pointerId);
    }

    #move(event) {
        const before = this.#pointers.get(event.pointerId);
        if (!before) return;
        const now = { x: event.clientX, y: event.clientY };
        const other = [...this.#pointers].find(([id]) => id !== event.pointerId)?.[1];
        const factor = other ? distance(now, other) / Math.max(1, distance(before, other)) : 1;
        const middle = other ? between(now, other) : now;
        const was = other ? between(before, other) : before;
        if (other || this.element.classList.contains('zoomed')) {
            this.#look(factor, middle, { x: middle.x - was.x, y: middle.y - was.y });
        }
        Object.assign(before, now);
    }

    #up(event) {
        const pointer = this.#pointers.get(event.pointerId);
        const alone = this.#pointers.size === 1;
        this.#pointers.delete(event.pointerId);
        if (pointer && alone && distance(pointer.from, pointer) < TAP) this.tapped(event.target);
    }

    #cancel(event) {
        this.#pointers.delete(event.pointerId);
    }

    #key(event) {
        if (event.key === 'Enter' || event.key === ' ') {
            event.preventDefault();
            this.tapped(event.target);
        } else if (event.key in KEYS) {
            event.preventDefault();
            const [factor, x = 0, y = 0] = KEYS[event.key];
            this.#look(factor, this.#middle(), { x: -40 * x, y: -40 * y });
        }
    }

    #button(name) {
        if (name === 'in' || name === 'out') this.#look(name === 'in' ? 1.4 : 1 / 1.4, this.#middle());
        if (name === 'all') {
            this.#seen = this.#whole;
            this.#apply();
        }
    }
}

/** A size that can be changed is a button to keys and to those who listen. */
function asButton(size) {
    size.setAttribute('tabindex', '0');
    size.setAttribute('role', 'button');
    size.setAttribute('aria-label', size.dataset.says ?? size.dataset.field);
}

const distance = (one, other) => Math.hypot(one.x - other.x, one.y - other.y);
const between = (one, other) => ({ x: (one.x + other.x) / 2, y: (one.y + other.y) / 2 });
const hold = (value, least, room) => Math.min(Math.max(value, least), least + Math.max(0, room));
