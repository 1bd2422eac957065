import { useSignal } from "@preact/signals";
import type { CardPaper } from "../../drawing/cards/cardStyles.ts";
import { cardsPage } from "../writing/cards.ts";
import type { PaneState } from "../state/paneState.ts";
import { PrintFrame } from "../controls/printFrame.tsx";
import { putCards } from "../writing/putCards.ts";
import { Choice } from "./salvageForm.tsx";
import { texts } from "../state/texts.ts";
import { usualPaper } from "../state/usualPaper.ts";

/** One card for each distinct piece, to be printed and nailed to the saw. */
export function CardSection({ state }: { state: PaneState }) {
  const chosen = useSignal<CardPaper["paper"] | null>(null);
  const perPage = useSignal<CardPaper["perPage"]>(2);
  const page = useSignal<string | null>(null);
  const { model, unit } = state.report.value;
  const paper = chosen.value ?? usualPaper(unit);
  if (!model) return <p class="lp-note">{texts.notYet}</p>;
  return (
    <>
      <p class="lp-note">{texts.cardsLead}</p>
      <div class="lp-three">
        <Choice
          label={texts.paper}
          value={paper}
          of={["letter", "A4"]}
          change={(value) => (chosen.value = value as CardPaper["paper"])}
        />
        <Choice
          label={texts.perPage}
          value={String(perPage.value)}
          of={["2", "4"]}
          change={(value) => (perPage.value = Number(value) as CardPaper["perPage"])}
        />
      </div>
      <p class="lp-caution">{texts.cautionInSheet}</p>
      <button
        type="button"
        class="lp-main"
        onClick={() => (page.value = cardsPage(model, { paper, perPage: perPage.value }))}
      >
        {texts.printCards}
      </button>
      {state.host.picture && (
        <button type="button" onClick={() => void putCards(state)}>
          {texts.cardsIntoSheet}
        </button>
      )}
      <PrintFrame page={page.value} title={texts.sections.cards} done={() => (page.value = null)} />
    </>
  );
}
