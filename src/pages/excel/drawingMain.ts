import { mountDrawing } from "../../pane/drawingPage.tsx";
import { askedRoof } from "../../pane/writing/askedRoof.ts";
import "./pane.css";

// The drawing of the roof in this page's address, large: opened from the pane.
const place = document.getElementById("drawing")!;
const asked = askedRoof(location.hash);
if (!asked || !mountDrawing(place, asked))
  place.textContent = "There is no roof in this page's address. Open it from the pane again.";
