// Keeps the pages of one build on this machine, so that they open without a network. VERSION and FILES are written over this by the build.
/* global self, caches, fetch, Request, URL, VERSION, FILES */
const PREFIX = "longpoint ";
const OWN = PREFIX + VERSION;
// A file with a hash of its content in its name never changes.
const HASHED = /[.\w-]*[0-9a-f]{8,20}\.\w+$/;

self.addEventListener("install", (event) => event.waitUntil(keep()));

async function keep() {
  const cache = await caches.open(OWN);
  await Promise.all(
    FILES.map(async (file) => {
      const known = HASHED.test(file) && (await caches.match(file));
      if (known) return cache.put(file, known);
      const answer = await fetch(new Request(file, { cache: "no-cache" }));
      if (!answer.ok) throw new Error(`${file}: ${answer.status}`);
      return cache.put(file, answer);
    }),
  );
}

// Goes to work when a page asks for it, never in the middle of a job.
self.addEventListener("message", ({ data }) => data === "take over" && self.skipWaiting());

self.addEventListener("activate", (event) => event.waitUntil(begin()));

// The build before is kept too: a page of it may be open in another tab.
async function begin() {
  const others = (await caches.keys()).filter((name) => name.startsWith(PREFIX) && name !== OWN);
  await Promise.all(others.slice(0, -1).map((name) => caches.delete(name)));
  await self.clients.claim();
}

self.addEventListener("fetch", (event) => {
  const { request } = event;
  const url = new URL(request.url);
  if (request.method !== "GET" || url.origin !== self.location.origin) return;
  event.respondWith(answer(url, request));
});

async function answer(url, request) {
  const file = url.pathname.endsWith("/") ? `${url.pathname}index.html` : url.pathname;
  const own = await caches.open(OWN);
  return (await own.match(file)) ?? (await caches.match(file)) ?? fetch(request);
}
