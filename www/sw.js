// Keeps the page's files, so that it comes without a network. Each build has a cache of its own, named by what is in it:
// a page is all of one build or all of another. The build writes VERSION and FILES in front.

/** @type {any} */
const worker = self;
const OURS = "tubewright-";
const CACHE = `${OURS}${VERSION}`;

worker.addEventListener("install", (/** @type {any} */ event) => {
  const requests = FILES.map((file) => new Request(file, { cache: "no-cache" }));
  event.waitUntil(caches.open(CACHE).then((cache) => cache.addAll(requests)));
});

worker.addEventListener("activate", (/** @type {any} */ event) => {
  const clear = async () => {
    for (const name of await caches.keys()) if (name.startsWith(OURS) && name !== CACHE) await caches.delete(name);
    await worker.clients.claim();
  };
  event.waitUntil(clear());
});

worker.addEventListener("message", (/** @type {any} */ event) => {
  if (event.data === "take over") worker.skipWaiting();
});

worker.addEventListener("fetch", (/** @type {any} */ event) => {
  /** @type {Request} */
  const request = event.request;
  const { origin, pathname } = new URL(request.url);
  if (request.method !== "GET" || origin !== location.origin) return;
  const find = async () => {
    const cache = await caches.open(CACHE);
    return (await cache.match(pathname)) ?? fetch(request);
  };
  event.respondWith(find());
});
