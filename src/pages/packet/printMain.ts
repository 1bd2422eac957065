import { printedPage } from "../../pane/writing/printedPage.ts";
import { packetForm } from "./packetForm.ts";
import { packetAsked } from "./packetAsked.ts";

// The packet, the cut cards or the cutting plan of the roof in this page's address: opened from the pane, which may not print everywhere.
const says = document.getElementById("says")!;
const asked = packetAsked(location.hash);
if (asked) await packetForm(says, asked);
else {
  const page = await printedPage(location.hash);
  if (page === null) says.textContent = "There is no roof in this page's address. Open it from the pane again.";
  else {
    const frame = document.createElement("iframe");
    const button = document.createElement("button");
    const print = () => frame.contentWindow!.print();
    frame.title = "What is printed";
    frame.srcdoc = page;
    frame.addEventListener("load", print, { once: true });
    button.textContent = "Print, or save as PDF";
    button.addEventListener("click", print);
    says.replaceWith(button, frame);
  }
}
