/**
 * Keeps the page on the device, so that it opens without the server. The server writes two lines above these: VERSION,
 * which changes with any file of the page, and FILES, all of them.
 */
const CACHE = `pitchboard ${VERSION}`;

addEventListener('install', (event) => {
    skipWaiting();
    event.waitUntil(caches.open(CACHE).then((cache) => cache.addAll(FILES)));
});

addEventListener('activate', (event) => {
    event.waitUntil(dropOthers().then(() => clients.claim()));
});

async function dropOthers() {
    const names = await caches.keys();
    await Promise.all(names.filter((name) => name !== CACHE).map((name) => caches.delete(name)));
}

addEventListener('fetch', (event) => {
    const url = new URL(event.request.url);
    if (event.request.method !== 'GET' || url.origin !== location.origin || url.pathname.startsWith('/api/')) return;
    event.respondWith(kept(event.request));
});

/** From the cache when this version's page has it; else from the server. */
async function kept(request) {
    const cache = await caches.open(CACHE);
    return (await cache.match(request, { ignoreSearch: true })) ?? fetch(request);
}
