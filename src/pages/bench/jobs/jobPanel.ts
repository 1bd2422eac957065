import { element } from "../element.ts";
import "./jobPanel.css";
import type { JobKeeper } from "./jobKeeper.ts";
import { JOB_FORM, type KeptJob } from "./jobStore.ts";
import { jobWords as words } from "./jobWords.ts";

/** What the page says, and what it does with a job that is chosen. */
export interface JobActions {
  say(text: string): void;
  resume(job: KeptJob): void;
}

/** The name of the job in the page, how it is kept, and all jobs that this browser keeps: go on with one, or delete it. */
export function jobPanel(
  place: HTMLElement,
  keeper: JobKeeper,
  { say, resume }: JobActions,
): { readonly told: () => void } {
  const title = element("summary", {});
  const name = element("input", { type: "text", maxLength: 80, autocomplete: "off" });
  const state = element("p", {});
  const list = element("ul", {});
  const panel = element("details", { className: "jobs" }, [
    title,
    element("div", {}, [
      element("label", {}, [`${words.name} `, name]),
      state,
      element("p", { textContent: words.where }),
      list,
    ]),
  ]);
  place.append(panel);

  const show = async () => {
    let jobs: readonly KeptJob[] = [];
    try {
      jobs = await keeper.list();
    } catch {
      // Why there is none is said above the list.
    }
    list.replaceChildren(...jobs.map((job) => line(job, keeper, { say, resume: (one) => (close(), resume(one)) })));
  };
  const close = () => {
    panel.open = false;
    title.focus();
  };
  const told = () => {
    const { now } = keeper;
    title.textContent = words.title(now.name, now.fault !== null);
    state.textContent = now.fault
      ? words.faults[now.fault]
      : now.unkept
        ? words.soon
        : now.id
          ? words.kept
          : words.notYet;
    if (document.activeElement !== name) name.value = now.name;
    if (panel.open) void show();
  };

  panel.addEventListener("toggle", () => panel.open && void show());
  name.addEventListener("change", () => keeper.rename(name.value));
  panel.addEventListener("keydown", (event) => {
    if (event.key === "Escape") close();
    else if (event.key === "Enter" && event.target === name) keeper.rename(name.value);
  });
  addEventListener("pointerdown", (event) => {
    if (panel.open && !panel.contains(event.target as Node)) panel.open = false;
  });
  told();
  return { told };
}

function line(job: KeptJob, keeper: JobKeeper, { say, resume }: JobActions): HTMLElement {
  const here = job.id === keeper.now.id;
  const newer = job.form > JOB_FORM;
  const go = element("button", { type: "button", textContent: words.resume, disabled: here || newer });
  const drop = element("button", { type: "button", textContent: words.remove });
  for (const [button, does] of [
    [go, words.resume],
    [drop, words.remove],
  ] as const)
    button.setAttribute("aria-label", `${does}: ${job.name}`);
  const text = element("span", {}, [
    element("strong", { textContent: job.name }),
    ` ${here ? words.here : newer ? words.newer : words.changed(job.changed)}`,
  ]);
  go.addEventListener("click", () => resume(job));
  drop.addEventListener("click", () => {
    // Nothing brings it back: a second press is asked for.
    if (drop.textContent === words.remove) {
      drop.textContent = words.removeSure;
      drop.setAttribute("aria-label", `${words.removeSure}: ${job.name}`);
      return;
    }
    keeper.remove(job).then(
      () => say(words.removed(job.name)),
      () => say(words.notRemoved(job.name)),
    );
  });
  return element("li", {}, [text, go, drop]);
}
