/** Words for roofs side by side. */
export const compareTexts = {
  title: "Side by side",
  headings: ["Pitch, spacing", "Longest jack", "Ridge height", "Roof area", "Board feet", "Boards", "To buy", "Cost"],
  row: (pitch: string, spacing: string) => `${pitch} at ${spacing}`,
  take: (pitch: string, spacing: string) => `Take ${pitch} at ${spacing} into the roof`,
  taken: (pitch: string, spacing: string) => `Pitch ${pitch} and spacing ${spacing} are now in the fields.`,
  price: (unit: string) => `Price of a ${unit}`,
  unit: { in: "foot", mm: "meter" },
  notAPrice: "Type the price as a number, such as 1.35.",
  work: "Work out boards and cost",
  working: (done: number, of: number) => `Working out roof ${done + 1} of ${of}`,
  stop: "Stop",
  lead: "Boards and their length come from the lumber order of each roof; the cost is that length at one price, without waste of a store's lengths.",
  none: "cannot be framed",
  print: "Print the comparison",
  height: "Ridge height: over the plate, where the roof planes meet.",
};
