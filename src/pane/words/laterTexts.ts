/** Words for a part of the pane that is loaded after the rest. */
export const laterTexts = {
  loading: "Loading.",
  notLoaded: "This part of the pane could not be loaded. Check the connection.",
  again: "Try again",
  cardOf: (mark: string) => `Card of ${mark}`,
  before: (mark: string) => `Previous, ${mark}`,
  next: (mark: string) => `Next, ${mark}`,
  close: "Close the card",
};
