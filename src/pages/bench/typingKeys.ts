import { element } from "./element.ts";
import "./typingKeys.css";

/** What a phone's keyboard hides behind other keys, and a length cannot do without. */
const KEYS = ["'", '"', "/", "-", "Space"] as const;
const NAMES: Readonly<Record<(typeof KEYS)[number], string>> = {
  "'": "feet",
  '"': "inches",
  "/": "fraction bar",
  "-": "dash",
  Space: "space",
};

/** On a device that is touched, shows keys for feet, inches and fractions over the keyboard while a text field of a place is in hand. */
export function typingKeys(place: HTMLElement): void {
  if (!matchMedia("(pointer: coarse)").matches) return;
  let field: HTMLInputElement | null = null;
  const bar = element(
    "div",
    { className: "typing-keys", hidden: true },
    KEYS.map((key) => {
      const button = element("button", { type: "button", textContent: key, tabIndex: -1 });
      button.setAttribute("aria-label", NAMES[key]);
      // The field keeps the keyboard.
      button.addEventListener("pointerdown", (event) => event.preventDefault());
      button.addEventListener("click", () => {
        if (!field) return;
        const text = key === "Space" ? " " : key;
        field.setRangeText(
          text,
          field.selectionStart ?? field.value.length,
          field.selectionEnd ?? field.value.length,
          "end",
        );
        field.dispatchEvent(new InputEvent("input", { bubbles: true, data: text, inputType: "insertText" }));
      });
      return button;
    }),
  );
  const stay = () => {
    const seen = visualViewport;
    if (seen) bar.style.bottom = `${Math.max(0, innerHeight - seen.height - seen.offsetTop)}px`;
  };
  place.addEventListener("focusin", ({ target }) => {
    field = target instanceof HTMLInputElement && target.type === "text" ? target : null;
    bar.hidden = field === null;
    stay();
  });
  place.addEventListener("focusout", () => {
    field = null;
    bar.hidden = true;
  });
  visualViewport?.addEventListener("resize", stay);
  visualViewport?.addEventListener("scroll", stay);
  document.body.append(bar);
}
