import { element } from "./element.ts";

/** What a narrow screen shows. */
type Side = "sheet" | "pane";

const NAMES: Readonly<Record<Side, string>> = { sheet: "Sheet", pane: "Roof" };

/** On a narrow screen sheet and pane take turns, one tap apart; on a wide one the style sheet hides these buttons. */
export function phoneTabs(): void {
  const buttons = (Object.keys(NAMES) as Side[]).map((side) => {
    const button = element("button", { type: "button", textContent: NAMES[side] });
    button.addEventListener("click", () => show(side));
    return [side, button] as const;
  });
  const show = (side: Side) => {
    document.body.dataset["shows"] = side;
    for (const [own, button] of buttons) button.setAttribute("aria-pressed", String(own === side));
  };
  const bar = element(
    "nav",
    { id: "tabs" },
    buttons.map(([, button]) => button),
  );
  bar.setAttribute("aria-label", "Sheet or roof");
  document.body.append(bar);
  show("pane");
}
