import { expect, it } from "vitest";
import type { Area } from "../../../src/hosts/host.ts";
import { paneState, setInput } from "../../../src/pane/state/paneState.ts";
import { cardSheet } from "../../../src/pane/writing/cards.ts";
import { cardsGiven } from "../../../src/pane/writing/packetOf.ts";
import { putCards } from "../../../src/pane/writing/putCards.ts";
import { sheetHost } from "../sheetHost.ts";

/** A sheet without cells that takes so many pictures, then fails; and what was taken back. */
function pane(most: number) {
  const takenBack: string[] = [];
  const shown: Area[] = [];
  let pictures = 0;
  const { host } = sheetHost([], {
    write: async ({ title }) => ({ title, areas: [{ sheet: "Cut cards", row: 0, column: 0, rows: 1, columns: 1 }] }),
    picture: async () => {
      if (++pictures > most) throw new Error("The sheet is full.");
    },
    show: async (area) => void shown.push(area),
    takeBack: async ({ title }) => (takenBack.push(title), []),
  });
  return { state: paneState(host), takenBack, shown, pictures: () => pictures };
}

it("puts a picture of every card into the sheet, as one step that can be taken back", async () => {
  const { state, takenBack, shown, pictures } = pane(Infinity);
  await putCards(state);
  // A card for each piece, and a second one for the hip with its marks.
  // Commons and king commons are one card, and the hip has two.
  expect(pictures()).toBe(state.report.value.model!.pieces.length - 2 + 1);
  expect([state.written.value.length, takenBack]).toEqual([1, []]);
  expect(shown).toEqual([{ sheet: "Cut cards", row: 0, column: 0, rows: 1, columns: 1 }]);
});

it("draws the cards on a free sheet, each under its name, and stops when told", async () => {
  const [put, titles] = [[] as unknown[], [] as string[]];
  const { host } = sheetHost([], {
    sheets: async () => ["Cut cards"],
    write: async ({ title, blocks }) => (titles.push(title, blocks[0]!.sheet), { title, areas: [] }),
    picture: async (...given) => void put.push(given),
  });
  const state = paneState(host);
  await putCards(state);
  const { pictures } = cardSheet(state.report.value.model!, "Cut cards 2", cardsGiven(state));
  expect(put).toEqual(pictures.map(({ row, svg, width, height }) => ["Cut cards 2", row, 0, svg, { width, height }]));
  expect(titles).toEqual(["Cut cards", "Cut cards 2"]);
  let pictured = 0;
  const stopped = paneState({ ...host, picture: async () => void (++pictured === 3 && stopped.work.value!.stop()) });
  await putCards(stopped);
  expect([pictured, stopped.says.value, stopped.written.value]).toEqual([3, "Stopped. Nothing was written.", []]);
});

it("does nothing where the sheet takes no pictures, or there is no roof", async () => {
  const { host } = sheetHost([], { write: () => Promise.reject(new Error("Not asked for.")) });
  const bare = paneState(host);
  await putCards(bare);
  const roofless = paneState({ ...host, picture: async () => undefined });
  setInput(roofless, "Span", "");
  await putCards(roofless);
  expect([bare.says.value, roofless.says.value]).toEqual(["", ""]);
});

it("leaves nothing where a picture fails, and says why", async () => {
  const { state, takenBack } = pane(2);
  await putCards(state);
  expect([state.written.value.length, takenBack]).toEqual([0, ["Cut cards"]]);
  expect(state.says.value).toBe("Nothing was written. The sheet is full.");
});
