/** A sheet that lies over the page: the page behind it waits, and the key that leaves it gives focus back. */
import { AsyncDirective, directive } from '../lib/async-directive.js';
import { html } from '../lib/lit-html.js';

class Shown extends AsyncDirective {
    update(part) {
        const dialog = part.element;
        this.dialog = dialog;
        this.back ??= document.activeElement;
        if (!dialog.open) queueMicrotask(() => dialog.isConnected && !dialog.open && dialog.showModal());
    }

    /** While it is open it keeps the focus from everything else, even on its way out. */
    disconnected() {
        this.dialog.close();
        this.back?.focus?.();
    }
}

const shown = directive(Shown);

export const over = ({ name, closed, kind = 'sheet-over' }, content) => html`<dialog
    class="${kind} over-${name}"
    aria-labelledby="over-title"
    ${shown()}
    @cancel=${(event) => {
        event.preventDefault();
        closed();
    }}
    @click=${(event) => event.target === event.currentTarget && closed()}
>
    ${content}
</dialog>`;
