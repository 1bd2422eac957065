/** Things one after the other, and how many more there are. */
export const listed = (items: readonly string[], most = 8) =>
  items.slice(0, most).join(", ") + (items.length > most ? ` and ${items.length - most} more` : "");
