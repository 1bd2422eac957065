import { render } from "preact";
import { onRoofNews } from "../bench/roofNews.ts";
import { keptOffline } from "../bench/offline.ts";
import { typingKeys } from "../bench/typingKeys.ts";
import { roofAsked, roofOf, stampOf, type RoofAsked } from "../packet/packetAsked.ts";
import "./saw.css";
import "./sawForms.css";
import type { SawJob } from "./sawJob.ts";
import { SawPage } from "./sawPage.tsx";
import { newer, offline, sawState } from "./sawState.ts";
import { sawStore } from "./sawStore.ts";
import { StartList } from "./startList.tsx";

const place = document.getElementById("saw")!;
const store = sawStore(() => localStorage);

function open(asked: RoofAsked | null, kept: { id: string; job: SawJob } | null): void {
  const state = sawState(store, asked, kept);
  place.replaceChildren();
  render(state ? <SawPage state={state} store={store} /> : <StartList store={store} open={open} />, place);
}

open(roofAsked(location.hash), null);
addEventListener("hashchange", () => location.reload());
typingKeys(document.body);
onRoofNews((text) => {
  const roof = roofOf(text);
  newer.value = roof && stampOf(roof);
});
void keptOffline(() => Promise.resolve()).then((how) => (offline.value = how));
