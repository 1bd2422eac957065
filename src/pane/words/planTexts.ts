/** What the printed cutting plan says beside its boards. */
export const planTexts = {
  shopping: "Shopping list",
  shoppingColumns: ["Count", "Size", "Board", "For waste"],
  offCuts: "Off-cuts to keep",
  offCutColumns: ["Count", "Size", "At least", "From boards"],
  noOffCuts: (least: string) => `None of ${least} or more.`,
  nothing: "Nothing to buy.",
} as const;
