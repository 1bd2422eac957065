import { element } from "./element.ts";
import "./offline.css";
import { offlineWords as words } from "./offlineWords.ts";

/** How it stands with the page when there is no network. */
export type Offline = "kept" | "not kept" | "cannot";

/**
 * Has the browser keep all pages of this build, so that they open without a network, and offers a newer build when there is one: it is loaded when
 * the user says so, never in the middle of a job. `before` puts everything away that is not kept yet.
 */
export async function keptOffline(before: () => Promise<unknown>): Promise<Offline> {
  const workers = (navigator as Partial<Navigator>).serviceWorker;
  // Missing where the address is no secure one.
  if (!workers) return "cannot";
  try {
    const registration = await workers.register("sw.js");
    const waits = () => registration.waiting && workers.controller && offer(registration.waiting, workers, before);
    waits();
    registration.addEventListener("updatefound", () => {
      const coming = registration.installing;
      coming?.addEventListener("statechange", () => coming.state === "installed" && waits());
    });
    if (registration.active) return "kept";
    const first = registration.installing ?? registration.waiting;
    return first && (await settled(first)) ? "kept" : "not kept";
  } catch {
    return "not kept";
  }
}

/** Whether a worker that is on its way comes to work: it is given up where one file of its build is missing. */
function settled(worker: ServiceWorker): Promise<boolean> {
  return new Promise((resolve) => {
    const look = () => {
      if (worker.state === "activated") resolve(true);
      else if (worker.state === "redundant") resolve(false);
    };
    worker.addEventListener("statechange", look);
    look();
  });
}

function offer(waiting: ServiceWorker, workers: ServiceWorkerContainer, before: () => Promise<unknown>): void {
  if (document.querySelector(".newer")) return;
  const load = element("button", { type: "button", textContent: words.load });
  const later = element("button", { type: "button", textContent: words.later });
  const bar = element("div", { className: "newer" }, [element("p", { textContent: words.newer }), load, later]);
  bar.setAttribute("role", "status");
  load.addEventListener("click", () => {
    load.disabled = true;
    workers.addEventListener("controllerchange", () => location.reload(), { once: true });
    void before().finally(() => waiting.postMessage("take over"));
  });
  later.addEventListener("click", () => bar.remove());
  document.body.append(bar);
}
