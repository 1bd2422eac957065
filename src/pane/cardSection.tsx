import { useSignal } from "@preact/signals";
import type { CardPaper } from "../drawing/cardStyles.ts";
import { cardsPage } from "./cards.ts";
import type { PaneState } from "./paneState.ts";
import { PrintFrame } from "./printFrame.tsx";
import { putCards } from "./putCards.ts";
import { Choice } from "./salvageForm.tsx";
import { texts } from "./texts.ts";

/** One card for each distinct piece, to be printed and nailed to the saw. */
export function CardSection({ state }: { state: PaneState }) {
  const paper = useSignal<CardPaper["paper"]>(state.report.value.unit === "mm" ? "A4" : "letter");
  const perPage = useSignal<CardPaper["perPage"]>(2);
  const page = useSignal<string | null>(null);
  const { model } = state.report.value;
  if (!model) return <p class="lp-note">{texts.notYet}</p>;
  return (
    <>
      <p class="lp-note">{texts.cardsLead}</p>
      <div class="lp-three">
        <Choice label={texts.paper} value={paper.value} of={["letter", "A4"]} change={(value) => (paper.value = value as CardPaper["paper"])} />
        <Choice label={texts.perPage} value={String(perPage.value)} of={["2", "4"]} change={(value) => (perPage.value = Number(value) as CardPaper["perPage"])} />
      </div>
      <p class="lp-caution">{texts.cautionInSheet}</p>
      <button type="button" class="lp-main" onClick={() => (page.value = cardsPage(model, { paper: paper.value, perPage: perPage.value }))}>
        {texts.printCards}
      </button>
      {state.host.kind === "excel" && (
        <button type="button" onClick={() => void putCards(state)}>
          {texts.cardsIntoSheet}
        </button>
      )}
      <PrintFrame page={page.value} title={texts.sections.cards} done={() => (page.value = null)} />
    </>
  );
}
