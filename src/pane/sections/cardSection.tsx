import { useSignal } from "@preact/signals";
import type { CardPaper } from "../../drawing/cards/cardStyles.ts";
import { cardsPage } from "../writing/cards.ts";
import { cardsGiven } from "../writing/packetOf.ts";
import { openedElsewhere } from "../writing/printAddress.ts";
import type { PaneState } from "../state/paneState.ts";
import { Paper } from "../controls/paper.tsx";
import { PaperChoice, paperOf } from "../controls/paperChoice.tsx";
import { putCards } from "../writing/putCards.ts";
import { Choice } from "../controls/choice.tsx";
import { roofName } from "../state/roofName.ts";
import { texts } from "../words/texts.ts";

/** One card for each distinct board, to be looked at, printed and nailed to the saw. */
export function CardSection({ state }: { state: PaneState }) {
  const chosen = useSignal<CardPaper["paper"] | null>(null);
  const perPage = useSignal<CardPaper["perPage"]>(2);
  const { model, unit } = state.report.value;
  const paper = paperOf(chosen, unit);
  if (!model) return <p class="lp-note">{texts.notYet}</p>;
  const given = cardsGiven(state);
  return (
    <>
      <p class="lp-note">{texts.cardsLead}</p>
      <p class="lp-note">{given.sticks ? texts.cardsOfPlan : texts.cardsNoPlan}</p>
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
      <Paper
        make={() => cardsPage(model, { paper, perPage: perPage.value }, given)}
        look={texts.lookAtCards}
        print={texts.printCards(roofName(model.frame.spec))}
        title={texts.sections.cards}
        elsewhere={openedElsewhere(state, { paper, perPage: perPage.value, plan: given.sticks !== undefined })}
      />
      {state.host.picture && (
        <button type="button" onClick={() => void putCards(state)}>
          {texts.cardsIntoSheet}
        </button>
      )}
    </>
  );
}
