import { useComputed, useSignal } from "@preact/signals";
import type { ComponentChildren } from "preact";
import type { BlockRow, Row } from "../../../functions/arguments/roofBlock.ts";
import type { WingRow } from "../../../functions/arguments/wingRows.ts";
import { FieldView, fieldId, messageAt } from "../controls/fieldView.tsx";
import { helpDrawing } from "../controls/helpDrawing.ts";
import { Wrong } from "../controls/textEntry.tsx";
import type { Field, FoldName } from "../state/fields.ts";
import { fieldsIn, foldWords, type Said } from "../state/foldWords.ts";
import type { PaneState } from "../state/paneState.ts";
import { lookTexts } from "../words/lookTexts.ts";
import { texts } from "../words/texts.ts";

/** Fields side by side; under them what is wrong with any, and the help of the one in hand, so that no field moves while it is typed into. */
export function FieldGroup({
  state,
  rows,
  wing,
}: {
  state: PaneState;
  rows: readonly (readonly Field[])[];
  wing?: string;
}) {
  const fields = rows.flat();
  const { help, inHand } = state.looking;
  const at = inHand.value;
  const asked = help.value && at.wing === wing && fields.some(({ row }) => row === at.row);
  return (
    <>
      {rows.map((row) => (
        <div key={row[0]!.row} class="lp-fields">
          {row.map((field) => (
            <FieldView key={field.row} state={state} field={field} {...(wing === undefined ? {} : { wing })} />
          ))}
        </div>
      ))}
      {fields.map(({ row }) => (
        <Fault key={row} state={state} row={row} wing={wing} />
      ))}
      {asked && <Help row={at.row} wing={wing} />}
    </>
  );
}

/** What is wrong with a field. */
function Fault({ state, row, wing }: { state: PaneState; row: BlockRow; wing: string | undefined }) {
  const place = wing === undefined ? { row } : { row, wing };
  const words = useComputed(() => messageAt(state, place) ?? "").value;
  return <Wrong id={`${fieldId(place)}-wrong`} of={row} words={words} />;
}

function Help({ row, wing }: { row: BlockRow; wing: string | undefined }) {
  const drawing = wing === undefined ? helpDrawing(row) : null;
  return (
    <div class="lp-helpbox" id="lp-help">
      {drawing && <span dangerouslySetInnerHTML={{ __html: drawing }} />}
      <p>
        <b>{texts.place(row, wing)}.</b>{" "}
        {wing === undefined ? texts.help[row as Row] : texts.helpInWing[row as WingRow]}
      </p>
    </div>
  );
}

/** Fields that most roofs need seldom, folded; their head says what they hold. Opens by itself where one of them is at fault. */
export function FieldFold({
  state,
  fold,
  wing,
  children,
}: {
  state: PaneState;
  fold: FoldName;
  wing?: string;
  children?: ComponentChildren;
}) {
  const open = useSignal(false);
  const fields = fieldsIn(fold);
  const place = wing === undefined ? {} : { wing };
  const fault = useComputed(() => fields.some(({ row }) => messageAt(state, { row, ...place }) !== undefined)).value;
  return (
    <details class="lp-fold" open={open.value || fault} onToggle={(event) => (open.value = event.currentTarget.open)}>
      <summary>
        <h3>{lookTexts.folds[fold]}</h3>
        <FoldWords said={() => foldWords(fold, state.inputs.value, state.report.value, wing)} />
      </summary>
      <FieldGroup state={state} rows={[fields]} {...place} />
      {children}
    </details>
  );
}

/** Values in words; what differs from the default has a mark, and words for whoever does not see it. */
export function FoldWords({ said }: { said: () => readonly Said[] }) {
  const all = said();
  return (
    <span class="lp-said">
      {all.map(({ words, own }, i) => (
        <span key={words} class={own ? "lp-own" : undefined}>
          {own && <span class="lp-hidden">{lookTexts.differs}</span>}
          {words}
          {i < all.length - 1 ? ", " : ""}
        </span>
      ))}
    </span>
  );
}
