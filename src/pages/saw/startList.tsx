import { useEffect } from "preact/hooks";
import { useSignal } from "@preact/signals";
import { jobStore, StoreFault, type KeptJob } from "../bench/jobs/jobStore.ts";
import { Originals } from "../bench/originals.ts";
import { PANE } from "../../pane/state/remembered.ts";
import { roofOf, type RoofAsked } from "../packet/packetAsked.ts";
import { progress, type SawJob } from "./sawJob.ts";
import type { SawStore } from "./sawStore.ts";
import { sawWords as words } from "./sawWords.ts";

/** The jobs to go on with where no roof came with the address: those at the saw before, and those of the browser's sheet. */
export function StartList({
  store,
  open,
}: {
  store: SawStore;
  open: (asked: RoofAsked | null, kept: { id: string; job: SawJob } | null) => void;
}) {
  const sheetJobs = useSignal<readonly KeptJob[]>([]);
  const says = useSignal("");
  const sure = useSignal("");
  const kept = useSignal(store.list());
  const jobs = jobStore(globalThis.indexedDB, new Originals());
  const fault = (error: unknown) => (says.value = words.faults[error instanceof StoreFault ? error.why : "forbidden"]);
  useEffect(() => void jobs.list().then((found) => (sheetJobs.value = found), fault), []);
  const openSheet = async ({ id }: KeptJob) => {
    const book = await jobs.read(id).catch((error: unknown) => (fault(error), null));
    const roof = roofOf(book?.kept?.[PANE] ?? "");
    if (roof) open(roof, null);
    else says.value = words.noRoof;
  };
  return (
    <main>
      <p>{words.none}</p>
      <p role="status" class={says.value === "" ? undefined : "caution"}>
        {says.value}
      </p>
      <h2>{words.atSaw}</h2>
      {kept.value.length === 0 && <p class="soft">{words.noJobs}</p>}
      <ul class="list">
        {kept.value.map((one) => {
          const roof = roofOf(one.job.roof);
          if (!roof) return null;
          const { done, all } = progress(one.job, roof.model);
          return (
            <li key={one.id} class="two">
              <button type="button" onClick={() => open(null, one)}>
                <b>{roof.model.job || words.untitled}</b> <span>{words.cutOf(done, all)}</span>
              </button>
              <button
                type="button"
                onClick={() => {
                  if (sure.value !== one.id) return void (sure.value = one.id);
                  store.remove(one.id);
                  kept.value = store.list();
                }}
              >
                {sure.value === one.id ? words.removeSure : words.remove}
              </button>
            </li>
          );
        })}
      </ul>
      <h2>{words.inSheet}</h2>
      {sheetJobs.value.length === 0 && <p class="soft">{words.noJobs}</p>}
      <ul class="list">
        {sheetJobs.value.map((one) => (
          <li key={one.id}>
            <button type="button" onClick={() => void openSheet(one)}>
              <b>{one.name}</b>
            </button>
          </li>
        ))}
      </ul>
    </main>
  );
}
