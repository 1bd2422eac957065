import { useComputed } from "@preact/signals";
import { jackTable } from "../../../functions/jackTable.ts";
import { nonBreaking } from "../../drawing/canvas/nonBreaking.ts";
import { useLater } from "../controls/useLater.ts";
import type { RoofState } from "../state/paneState.ts";
import { groupedNotes } from "./groupedNotes.ts";
import { TableView } from "../controls/tableView.tsx";
import { tableTexts } from "../controls/tableTexts.ts";
import { lookTexts } from "../words/lookTexts.ts";
import { texts } from "../words/texts.ts";

const COLUMNS = [
  "Piece",
  "Side",
  "Long point",
  "Tape",
  "Shortest board",
  "Saw tilt",
  "Left",
  "Right",
  "Offset",
  "Plate mark",
  "Hip mark",
];

/** The jacks of the roof as it is typed, redrawn after every keystroke, when the plan is on the screen. */
export function ScheduleSection({ state }: { state: RoofState }) {
  const now = useComputed(() => ({ table: state.schedule.value, report: state.report.value }));
  const { table, report } = useLater(now);
  const { unit, model } = report;
  const shown = table && tableTexts(jackTable.columns, table, unit, COLUMNS);
  const longOf = new Map(model?.pieces.map(({ mark, longPoint }) => [mark, longPoint]));
  const jacks = model?.pieces.filter(({ member }) => member === "jack") ?? [];
  const marks = shown ? shown.rows.map(([mark]) => mark!) : [];
  const listed = new Set(marks);
  const longest = Math.max(...marks.map((mark) => longOf.get(mark) ?? 0));
  return (
    <section aria-labelledby="lp-schedule">
      <h2 id="lp-schedule">{texts.sections.schedule}</h2>
      {shown ? (
        <>
          <p class="lp-note">
            {texts.jackCount(
              jacks.reduce((sum, { left, right }) => sum + left + right, 0),
              jacks.length,
            )}
          </p>
          <TableView
            name={texts.scheduleCaption}
            {...shown}
            pieces={marks}
            racked={marks.map((mark) => (longOf.get(mark) ?? 0) / longest)}
          />
          <p class="lp-marks">
            {texts.otherMembers}
            {model?.pieces
              .filter(({ mark }) => !listed.has(mark))
              .map(({ mark }) => (
                <button
                  key={mark}
                  type="button"
                  class="lp-word"
                  data-piece={mark}
                  aria-label={lookTexts.openCard(mark)}
                >
                  {mark}
                </button>
              ))}
          </p>
          <ul class="lp-notes">
            {groupedNotes(jacks, unit).map(({ note, marks }) => (
              <li key={note}>
                <b>{marks.join(", ")}</b> {nonBreaking(note)}
              </li>
            ))}
          </ul>
        </>
      ) : (
        <p class="lp-note">{texts.notYet}</p>
      )}
    </section>
  );
}
