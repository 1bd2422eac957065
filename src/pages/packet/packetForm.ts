import type { Problem } from "../../../functions/problem.ts";
import { Failure } from "../../measure/result.ts";
import { PAPERS, PIXELS, type CardPaper } from "../../drawing/cards/cardStyles.ts";
import { packetWords as words } from "../../drawing/packet/packetWords.ts";
import { orderNow } from "../../pane/state/orderNow.ts";
import { packetFor } from "../../pane/writing/packetOf.ts";
import { element } from "../bench/element.ts";
import { onRoofNews } from "../bench/roofNews.ts";
import { roofOf, stampOf, type RoofAsked } from "./packetAsked.ts";
import { PARTS, type PartName } from "./packetOf.ts";
import { packetPage } from "./packetParts.ts";
import { formWords } from "./formWords.ts";

const SHEETS = ["labels", "strips"] as const satisfies readonly PartName[];

/** Asks what a packet shall hold and on what paper, shows its pages as they will print, and prints them. */
export async function packetForm(says: HTMLElement, { inputs, kerf, kerfWidth, model }: RoofAsked): Promise<void> {
  const { spec } = model.frame;
  const packet = packetFor(model, kerfWidth);
  const order = await orderNow({ inputs, kerf }).catch(
    (error: unknown) => new Failure<Problem>({ kind: "fault", name: "LUMBERORDER", thrown: String(error) }),
  );
  const boxes = new Map(
    (Object.keys(PARTS) as PartName[]).map((name) => [
      name,
      element("input", { type: "checkbox", checked: PARTS[name] }),
    ]),
  );
  const choice = (label: string, of: readonly string[], now: string) => {
    const select = element(
      "select",
      {},
      of.map((value) => element("option", { value, textContent: formWords.choices[value] ?? value })),
    );
    select.value = now;
    return { select, label: element("label", {}, [label, select]) };
  };
  const paper = choice(formWords.paper, Object.keys(PAPERS), spec.unit === "mm" ? "A4" : "letter");
  const perPage = choice(formWords.perPage, ["2", "4"], "2");
  const print = element("button", { type: "button", className: "go", textContent: formWords.print });
  const count = element("p", {});
  count.setAttribute("role", "status");
  const form = element("header", { className: "ask" }, [
    element("fieldset", {}, [
      element("legend", { textContent: formWords.what }),
      ...[...boxes].map(([name, box]) => element("label", {}, [box, words.parts[name]])),
    ]),
    paper.label,
    perPage.label,
    print,
    count,
  ]);
  const style = element("style", {});
  const pages = element("main", { id: "pages" });

  const show = () => {
    const parts = new Set([...boxes].flatMap(([name, box]) => (box.checked ? [name] : [])));
    const on: CardPaper = {
      paper: paper.select.value as CardPaper["paper"],
      perPage: Number(perPage.select.value) as 2 | 4,
    };
    const made = new DOMParser().parseFromString(
      packetPage({ inputs, model, packet, order, kerf: kerfWidth, parts, paper: on }),
      "text/html",
    );
    document.title = made.title;
    style.textContent = made.querySelector("style")!.textContent;
    pages.replaceChildren(...made.body.children);
    const all = pages.childElementCount;
    const sheets = SHEETS.filter((name) => parts.has(name)).map((name) => formWords[name](on.paper));
    count.textContent = [formWords.pages(all), ...(all === 0 ? [] : [formWords.scale, ...sheets])].join(" ");
    print.disabled = all === 0;
    fit();
  };
  const fit = () => {
    const { width } = PAPERS[paper.select.value as CardPaper["paper"]];
    pages.style.setProperty("--fit", String(Math.min(1, document.documentElement.clientWidth / (width * PIXELS + 16))));
  };
  const news = element("p", { className: "changed" });
  news.setAttribute("role", "alert");
  form.append(news);
  onRoofNews((text) => {
    const now = roofOf(text);
    const stamp = now && stampOf(now);
    news.textContent = stamp === null || stamp === packet.stamp ? "" : formWords.changed(stamp);
  });
  form.addEventListener("change", show);
  addEventListener("resize", fit);
  print.addEventListener("click", () => window.print());
  document.head.append(style);
  says.replaceWith(form, pages);
  show();
  print.focus();
}
