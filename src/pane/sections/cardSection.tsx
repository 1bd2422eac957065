import { useSignal } from "@preact/signals";
import type { CardPaper } from "../../drawing/cards/cardStyles.ts";
import { cardsPage } from "../writing/cards.ts";
import type { PaneState } from "../state/paneState.ts";
import { PaperChoice, paperOf } from "../controls/paperChoice.tsx";
import { PrintFrame } from "../controls/printFrame.tsx";
import { putCards } from "../writing/putCards.ts";
import { Choice } from "../controls/choice.tsx";
import { roofName } from "../state/roofName.ts";
import { texts } from "../words/texts.ts";

/** One card for each distinct piece, to be printed and nailed to the saw. */
export function CardSection({ state }: { state: PaneState }) {
  const chosen = useSignal<CardPaper["paper"] | null>(null);
  const perPage = useSignal<CardPaper["perPage"]>(2);
  const page = useSignal<string | null>(null);
  const { model, unit } = state.report.value;
  const paper = paperOf(chosen, unit);
  if (!model) return <p class="lp-note">{texts.notYet}</p>;
  return (
    <>
      <p class="lp-note">{texts.cardsLead}</p>
      <div class="lp-three">
        <PaperChoice chosen={chosen} unit={unit} />
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
        {texts.printCards(roofName(model.frame.spec))}
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
