/** What the page says on which a packet is put together. */
export const formWords = {
  what: "What is in the packet",
  paper: "Paper",
  perPage: "Cards to a page",
  choices: { letter: "letter, 8 1/2 x 11 in", A4: "A4, 210 x 297 mm" } as Readonly<Record<string, string>>,
  print: "Print, or save as PDF",
  pages: (count: number) => (count === 0 ? "Choose at least one part." : count === 1 ? "1 page." : `${count} pages.`),
  scale: "In the print window keep this paper and 100 %; black and white is enough.",
  changed: (stamp: string) =>
    `The roof in the sheet has changed: its stamp is now ${stamp}. Open the packet from the pane again before you print.`,
  labels: (paper: string) =>
    paper === "A4"
      ? "Labels fit sheets of 21 stickers, 63.5 x 38.1 mm; print one on plain paper first."
      : "Labels fit sheets of 30 stickers, 2 5/8 x 1 in; print one on plain paper first.",
  strips: () => "Measure the line on the first strip page before you trust the rest.",
};
