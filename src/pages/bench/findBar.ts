import type { Area } from "../../hosts/host.ts";
import "./findBar.css";
import { element } from "./element.ts";
import { fileWords } from "./fileWords.ts";

/** What the find bar needs of the sheet. */
export interface Finder {
  find(text: string): readonly Area[];
  /** Puts another text in the place of one in cells, and tells how many changed. */
  replace(areas: readonly Area[], text: string, by: string): Promise<number>;
  selected(): Promise<Area>;
  show(area: Area): Promise<void>;
  /** Gives the keyboard back to the sheet. */
  leave(): void;
}

/** A bar below the file bar that finds and replaces in cells of all sheets; Enter goes to the next, Shift+Enter to the one before, Escape closes it. */
export function findBar(place: HTMLElement, finder: Finder): { readonly open: () => void } {
  const words = fileWords.find;
  const input = element("input", { type: "search", autocomplete: "off" });
  input.setAttribute("aria-label", words.label);
  const says = element("span", {});
  says.setAttribute("role", "status");
  const previous = element("button", { type: "button", textContent: words.previous });
  const next = element("button", { type: "button", textContent: words.next });
  const close = element("button", { type: "button", textContent: "×", className: "close" });
  close.setAttribute("aria-label", words.close);
  const by = element("input", { type: "text", autocomplete: "off", placeholder: words.by });
  by.setAttribute("aria-label", words.by);
  const one = element("button", { type: "button", textContent: words.replace });
  const all = element("button", { type: "button", textContent: words.all });
  const bar = element("div", { className: "find", hidden: true }, [input, previous, next, by, one, all, says, close]);
  bar.setAttribute("role", "search");
  place.append(bar);

  const go = async (by: 1 | -1) => {
    const found = finder.find(input.value);
    if (found.length === 0) {
      says.textContent = input.value.trim() === "" ? "" : words.nothing(input.value.trim());
      return;
    }
    const at = positionIn(found, await finder.selected());
    // From a cell that is found already the next one is meant; from between two, the one behind or before.
    const index = by > 0 ? Math.floor(at) + 1 : Math.ceil(at) - 1;
    const chosen = (index + found.length) % found.length;
    await finder.show(found[chosen]!);
    says.textContent = words.found(chosen + 1, found.length);
    // Showing a cell gives the keyboard to the sheet.
    input.focus();
  };
  const replace = async (which: "one" | "all") => {
    const found = finder.find(input.value);
    const { sheet, row, column } = await finder.selected();
    const here = found.filter((area) => area.sheet === sheet && area.row === row && area.column === column);
    // From a cell that does not hold it, the next one that does is meant.
    if (found.length === 0 || (which === "one" && here.length === 0)) return go(1);
    const meant = which === "all" ? found : here;
    const count = await finder.replace(meant, input.value, by.value);
    if (which === "one" && count > 0) return go(1);
    says.textContent = words.replaced(count, meant.length);
  };
  const shut = () => {
    bar.hidden = true;
    says.textContent = "";
    finder.leave();
  };
  next.addEventListener("click", () => void go(1));
  previous.addEventListener("click", () => void go(-1));
  one.addEventListener("click", () => void replace("one"));
  all.addEventListener("click", () => void replace("all"));
  close.addEventListener("click", shut);
  bar.addEventListener("keydown", (event) => {
    if (event.key === "Enter" && event.target === input) void go(event.shiftKey ? -1 : 1);
    else if (event.key === "Enter" && event.target === by) void replace("one");
    else if (event.key === "Escape") shut();
    else return;
    event.preventDefault();
  });
  return {
    open() {
      bar.hidden = false;
      input.focus();
      input.select();
    },
  };
}

/** Where an area stands among those found, in order; between two of them a half. */
function positionIn(found: readonly Area[], { sheet, row, column }: Area): number {
  const first = found.findIndex((one) => one.sheet === sheet);
  if (first < 0) return -0.5;
  let at = first - 0.5;
  for (let i = first; i < found.length && found[i]!.sheet === sheet; i++) {
    const one = found[i]!;
    if (one.row === row && one.column === column) return i;
    if (one.row < row || (one.row === row && one.column < column)) at = i + 0.5;
  }
  return at;
}
