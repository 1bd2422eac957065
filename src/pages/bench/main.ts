import { laterHost } from "../../hosts/laterHost.ts";
import { mountPane, paneDrawn } from "../../pane/pane.tsx";
import "./bench.css";
import { grip } from "./grip.ts";
import { phoneTabs } from "./phoneTabs.ts";
import { roofNews } from "./roofNews.ts";
import { startBook } from "./startBook.ts";
import { typingKeys } from "./typingKeys.ts";

// The pane answers while the sheet, ten times its size, is still on its way; once that is here it takes the page for a second.
const start = startBook(location.search);
const here = import(/* webpackChunkName: "sheet" */ "./sheetIsHere.ts");
const side = Promise.all([start, here, paneDrawn()]).then(async ([book]) =>
  (await import(/* webpackChunkName: "sheet" */ "./sheetSide.ts")).sheetSide(book),
);
void side.catch(() => {
  document.getElementById("sheet")!.textContent = "The sheet did not load. Reload the page.";
});

const host = laterHost(side.then((there) => there.host));
const news = roofNews();
const pane = document.getElementById("pane")!;
mountPane(pane, {
  ...host,
  openPage(address) {
    news.opened(address);
    open(address, "_blank", "noopener");
  },
  sawPage: "saw.html",
  // What is typed in the pane is a part of the job.
  async remember(key, text) {
    news.changed(text);
    await host.remember(key, text);
    (await side).changed();
  },
});
grip(document.getElementById("grip")!, pane);
typingKeys(pane);
phoneTabs();
