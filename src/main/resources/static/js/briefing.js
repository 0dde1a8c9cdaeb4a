// Helps a reader of a briefing: "from here" without asking the service, keeping the page on the device, and sending a
// signature later when there is no signal. The page says everything without it.
"use strict";
(() => {
    const page = document.querySelector("main.briefing");
    const form = document.getElementById("acknowledge");
    const KEPT = "crosshead.signatures";

    function firstRow(rows, fromM, key) {
        return rows.find((row) => Number(row.dataset[key]) >= fromM - 1);
    }

    function fill(id, row, cells) {
        const target = document.getElementById(id);
        if (!target) {
            return;
        }
        if (!row) {
            target.textContent = "\u2013";
            return;
        }
        const parts = cells.map((selector) => row.querySelector(selector)).filter(Boolean);
        target.replaceChildren(...parts.flatMap((part, i) => {
            const copy = document.createElement(i === 0 ? "span" : "small");
            copy.textContent = part.textContent.trim().replace(/\s+/g, " ");
            return i === 0 ? [copy] : [document.createTextNode(" "), copy];
        }));
    }

    function showFrom(fromM) {
        const points = [...page.querySelectorAll("table.handling tr[data-m]:not(.fireman)")];
        const braking = [...page.querySelectorAll("tr[data-target]")];
        fill("next-action", firstRow(points, fromM, "m"), [".do", ".place"]);
        const next = firstRow(braking, fromM + 2, "target");
        fill("next-braking", next, ["td:nth-child(2)", "td:first-child"]);
        if (next && Number(next.dataset.m) < fromM) {
            const now = document.createElement("strong");
            now.className = "problem";
            now.textContent = page.dataset.brakeNow + " ";
            document.getElementById("next-braking").prepend(now);
        }
        const water = [...page.querySelectorAll("tr[data-water]")];
        fill("next-water", firstRow(water, fromM + 2, "water"), [".place", "td:nth-child(3)"]);
        const reductions = braking.filter((row) => row.dataset.kind !== "stop");
        fill("next-restriction", firstRow(reductions, fromM, "target"), ["td:first-child"]);
    }

    // A figure leads to its workings, which are folded away: they are opened for it.
    function unfold() {
        const target = document.getElementById(decodeURIComponent(location.hash.slice(1)));
        const folded = target ? target.closest("details:not([open])") : null;
        if (folded) {
            folded.open = true;
            target.scrollIntoView();
        }
    }

    if (page) {
        window.addEventListener("hashchange", unfold);
        unfold();
        const select = document.getElementById("from");
        if (select) {
            select.addEventListener("change", () => showFrom(Number(select.value)));
        }
        page.querySelectorAll("figure.strip svg").forEach((svg) => {
            svg.addEventListener("click", (event) => {
                if (event.target.closest("a")) {
                    return;
                }
                const box = svg.getBoundingClientRect();
                const left = Number(svg.dataset.left) * box.width;
                const width = Number(svg.dataset.axis) * box.width;
                const share = Math.min(1, Math.max(0, (event.clientX - box.left - left) / width));
                const fromM = Number(svg.dataset.from);
                showFrom(fromM + share * (Number(svg.dataset.to) - fromM));
                document.getElementById("from-here").scrollIntoView({block: "nearest"});
            });
        });
        if ("serviceWorker" in navigator) {
            navigator.serviceWorker.register("/service-worker.js");
            // Kept at the first visit already: the worker sees only what is asked for after it has begun.
            caches.open("crosshead-1").then((store) => store.add(location.pathname)).catch(() => undefined);
        }
    }

    function kept() {
        return JSON.parse(localStorage.getItem(KEPT) || "[]");
    }

    async function send() {
        const waiting = kept();
        if (waiting.length === 0 || !navigator.onLine) {
            return;
        }
        try {
            const place = waiting[0].action.replace("/acknowledgements", "/token");
            const answer = await fetch(place, {headers: {Accept: "application/json"}});
            const token = await answer.json();
            for (const one of waiting) {
                const body = new URLSearchParams({clientId: one.clientId, deviceTime: one.deviceTime});
                body.set(token.parameter, token.token);
                const sent = await fetch(one.action, {method: "POST", body});
                if (sent.ok) {
                    localStorage.setItem(KEPT, JSON.stringify(kept().filter((other) => other.clientId !== one.clientId)));
                }
            }
        } catch (error) {
            // No signal: what is kept stays, and is sent when there is one.
        }
    }

    if (form) {
        form.addEventListener("submit", (event) => {
            form.elements.deviceTime.value = new Date().toISOString();
            if (!navigator.onLine) {
                event.preventDefault();
                const one = {
                    action: form.getAttribute("action"),
                    clientId: form.elements.clientId.value,
                    deviceTime: form.elements.deviceTime.value,
                };
                localStorage.setItem(KEPT, JSON.stringify([...kept(), one]));
                form.dataset.kept = "true";
            }
        });
    }
    window.addEventListener("online", send);
    send();
})();
