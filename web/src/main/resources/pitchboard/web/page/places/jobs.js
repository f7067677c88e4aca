/** The list of jobs. */
import { html, nothing } from '../lib/lit-html.js';
import { createJob, showJobs } from '../library.js';
import { bringBack } from '../bringing.js';
import { links } from '../server.js';
import { newJob } from '../starting.js';
import { change, state } from '../state.js';
import { goToJob } from '../way.js';
import { say } from '../words.js';

export function jobsPlace() {
    const { jobs, search, archived, kept } = state.jobs;
    return html`
        ${kept ? html`<p class="alarm" role="status">${say('jobs-kept')}</p>` : nothing}
        <div class="buttons">
            <button class="main" @click=${async () => goToJob(await createJob({ file: JSON.stringify(newJob(say('new-name'))) }))} ?disabled=${kept}>${say('new-job')}</button>
            <label class="button file-button">
                ${say('open-file')}
                <input type="file" accept=".yaml,.yml,.json" @change=${taken} />
            </label>
            <button aria-pressed=${archived} @click=${() => showJobs({ archived: !archived })}>${say('archived')}</button>
        </div>
        <input type="search" aria-label=${say('search')} placeholder=${say('search')} .value=${search} @input=${(event) => showJobs({ search: event.target.value })} />
        ${jobs.length === 0 ? html`<p>${say(search ? 'none-found' : 'no-jobs')}</p>` : nothing}
        <ul class="jobs">
            ${jobs.map((job) => card(job, kept))}
        </ul>
        ${jobs.length === 0 && !search && !archived
            ? html`<button @click=${async () => goToJob(await createJob({ from: 'demo' }))}>${say('demo')}</button>`
            : nothing}
    `;
}

async function taken(event) {
    const [file] = event.target.files;
    event.target.value = '';
    if (file) await bringBack(file);
}

const card = (job, kept) => html`<li>
    <a class="job" href="#job/${job.id}/tape">
        ${kept ? nothing : html`<img src="${links.picture(job.id)}?version=${job.version}" alt="" width="120" height="120" loading="lazy" />`}
        <span class="stack">
            <strong>${job.name || say('unnamed')}</strong>
            <span>${job.place}</span>
            ${job.saved ? html`<span class="soft">${say('saved-at', { when: when(job.saved) })}</span>` : nothing}
        </span>
    </a>
</li>`;

const when = (time) => new Date(time).toLocaleString([], { dateStyle: 'medium', timeStyle: 'short' });
