// Keeps briefings on the device: the service is asked first, the kept page is shown when there is no signal.
"use strict";
const STORE = "crosshead-1";

self.addEventListener("install", (event) => {
    event.waitUntil(caches.open(STORE).then((store) => store.addAll(["/crosshead.css", "/js/briefing.js", "/favicon.svg"])));
    self.skipWaiting();
});

self.addEventListener("activate", (event) => event.waitUntil(self.clients.claim()));

function isKept(url) {
    return /^\/briefings\/\d+(\/standing|\/cab)?$/.test(url.pathname) || /\.(css|js|svg)$/.test(url.pathname);
}

self.addEventListener("fetch", (event) => {
    const url = new URL(event.request.url);
    if (event.request.method !== "GET" || url.origin !== self.location.origin || !isKept(url)) {
        return;
    }
    event.respondWith(fetch(event.request).then((answer) => {
        if (answer.ok && !answer.redirected) {
            const copy = answer.clone();
            event.waitUntil(caches.open(STORE).then((store) => store.put(url.pathname, copy)));
        }
        return answer;
    }).catch(() => caches.open(STORE).then((store) => store.match(url.pathname)).then((found) => found || Response.error())));
});
