import { useSignal } from "@preact/signals";
import { useEffect, useMemo, useRef } from "preact/hooks";
import { PrintFrame } from "../controls/printFrame.tsx";
import { TableView } from "../controls/tableView.tsx";
import { TextEntry, Wrong } from "../controls/textEntry.tsx";
import type { PaneState } from "../state/paneState.ts";
import { boardsOf, boughtText, costOf, variantsOf, type Boards, type Variant } from "../state/sideBySide.ts";
import { compareTexts as words } from "../words/compareTexts.ts";
import { texts } from "../words/texts.ts";
import { comparePage } from "../writing/comparePage.ts";

/** The roof with other pitches and spacings: its lengths beside ridge height, area, boards to buy and cost; one press takes it into the fields. */
export function SideBySide({
  state,
  pitches,
  spacings,
}: {
  state: PaneState;
  pitches: readonly string[];
  spacings: readonly string[];
}) {
  const inputs = state.inputs.value;
  const kerf = state.kerf.value;
  const { unit } = state.report.value;
  const key = JSON.stringify([inputs, kerf, pitches, spacings]);
  const variants = useMemo(() => variantsOf(inputs, pitches, spacings), [key]);
  const price = useSignal("");
  const found = useSignal<{ key: string; boards: readonly (Boards | null)[]; running: boolean } | null>(null);
  const run = useRef(0);
  const printed = useSignal<string | null>(null);
  // Boards of the roof before are none of this one's.
  useEffect(() => () => void run.current++, [key]);
  const now = found.value?.key === key ? found.value : null;
  const wrong = costOf({ boards: 0, length: 0 }, price.value, unit) === null;

  const work = async () => {
    const own = ++run.current;
    const boards: (Boards | null)[] = [];
    found.value = { key, boards: [], running: true };
    for (const variant of variants) {
      boards.push(await boardsOf(variant, kerf));
      if (run.current !== own) return;
      found.value = { key, boards: [...boards], running: boards.length < variants.length };
    }
  };
  const stop = () => {
    run.current++;
    if (now) found.value = { ...now, running: false };
  };
  const take = ({ pitch, spacing, inputs: own }: Variant) => {
    state.inputs.value = own;
    state.says.value = words.taken(pitch, spacing);
  };
  const rows = variants.map(({ pitch, spacing, figures }, i) => {
    const boards = now?.boards[i];
    return [
      words.row(pitch, spacing),
      ...(figures.length > 0 ? figures : [words.none, "", "", ""]),
      boards ? String(boards.boards) : "",
      boards ? boughtText(boards.length, unit) : "",
      boards ? (costOf(boards, price.value, unit) ?? "") : "",
    ];
  });
  return (
    <>
      <h3>{words.title}</h3>
      <TableView
        name={words.title}
        headings={words.headings}
        rows={rows.map(([name, ...figures], i) => [
          <button
            type="button"
            class="lp-word"
            disabled={variants[i]!.figures.length === 0}
            aria-label={words.take(variants[i]!.pitch, variants[i]!.spacing)}
            onClick={() => take(variants[i]!)}
          >
            {name}
          </button>,
          ...figures,
        ])}
        numbers={words.headings.map((_, i) => i > 0)}
      />
      <div class="lp-three">
        <TextEntry
          label={words.price(words.unit[unit])}
          value={price.value}
          wrong={wrong}
          reads="lp-price-wrong"
          change={(text) => (price.value = text)}
        />
      </div>
      <Wrong id="lp-price-wrong" words={wrong ? words.notAPrice : ""} />
      <div role="status" class="lp-work">
        {now?.running && (
          <>
            <progress
              max={variants.length}
              value={now.boards.length}
              aria-label={words.working(now.boards.length, variants.length)}
            />
            <button type="button" onClick={stop}>
              {words.stop}
            </button>
          </>
        )}
      </div>
      <div class="lp-buttons">
        <button type="button" disabled={now?.running ?? false} onClick={() => void work()}>
          {words.work}
        </button>
        <button
          type="button"
          onClick={() =>
            (printed.value = comparePage(
              [texts.sections.compare, inputs["Job name"].trim()].filter(Boolean).join(": "),
              words.headings,
              rows,
              [words.height, words.lead, texts.cautionInSheet],
            ))
          }
        >
          {words.print}
        </button>
      </div>
      <p class="lp-note">
        {words.height} {words.lead}
      </p>
      <PrintFrame page={printed.value} title={words.title} elsewhere={undefined} done={() => (printed.value = null)} />
    </>
  );
}
