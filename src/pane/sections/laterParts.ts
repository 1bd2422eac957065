// What the pane does not show at first, in a script of its own: see later.tsx.
export { CardSection } from "./cardSection.tsx";
export { CheckSection } from "./checkSection.tsx";
export { PieceCard } from "./pieceCard.tsx";
export { CompareSection } from "./compareSection.tsx";
export { OrderSection } from "./orderSection.tsx";
export { drawView } from "./drawView.ts";
