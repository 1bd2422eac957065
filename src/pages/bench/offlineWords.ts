/** What is said of a newer version, and of pages without a network. */
export const offlineWords = {
  newer: "A newer Longpoint is ready. Load it when you are between two tasks; your job is kept.",
  load: "Load it now",
  later: "Later",
  states: {
    kept: "This page opens without a network from now on.",
    "not kept":
      "This page is not kept for use without a network: this browser stores nothing, or the connection broke. Load it once more.",
    cannot: "This page needs the network: its address does not start with https.",
  },
} as const;
