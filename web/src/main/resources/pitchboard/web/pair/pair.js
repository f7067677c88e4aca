/** Asks for the code that lets this device in. A code that came with the address is typed in already. */
const form = document.querySelector('form');
const trouble = document.querySelector('[role=alert]');

form.elements.code.value = decodeURIComponent(location.hash.slice(1));
form.elements.name.value = /Android|iPhone|iPad/.test(navigator.userAgent) ? 'phone' : '';
(form.elements.code.value ? form.elements.name : form.elements.code).focus();

form.addEventListener('submit', async (event) => {
    event.preventDefault();
    trouble.textContent = '';
    const { code, name } = Object.fromEntries(new FormData(form));
    const headers = { 'Content-Type': 'application/json' };
    try {
        const answer = await fetch('/api/pair', { method: 'POST', headers, body: JSON.stringify({ code, name }) });
        if (answer.ok) location.replace('/');
        else trouble.textContent = (await answer.json()).problems.map((problem) => problem.words).join(' ');
    } catch {
        trouble.textContent = 'There is no answer. Is this device on the same network?';
    }
});
