import { element } from "./element.ts";
import { fileWords } from "./fileWords.ts";

/** Words with a field for a name behind them, which is handed on once it is said to be right. */
export function askName(
  words: string,
  proposal: string,
  named: (name: string) => void,
): readonly [string, HTMLElement] {
  const name = element("input", { type: "text", value: proposal, maxLength: 80, autocomplete: "off", required: true });
  const go = element("button", { type: "submit", textContent: fileWords.saveNamed });
  const form = element("form", {}, [element("label", {}, [`${fileWords.name} `, name]), " ", go]);
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    if (name.value.trim() !== "") named(name.value.trim());
  });
  // Once it is on the page.
  setTimeout(() => name.select());
  return [words, form];
}
