/** The colors of a drawing as CSS values. */
export interface Theme {
  /** Lines and text. */
  readonly ink: string;
  /** Lines that help: dimensions, hidden edges, plates. */
  readonly faint: string;
  /** The one accent: jacks and their long points. */
  readonly accent: string;
  /** What the drawing lies on; also behind text, so that no line strikes it through. */
  readonly paper: string;
  readonly wood: string;
  /** What is in hand. */
  readonly lit: string;
  /** What needs care; never without a sign or words. */
  readonly caution: string;
}

/**
 * On a screen the page decides, by custom properties; without them the page's own text and ground colors serve, light or
 * dark. On paper a drawing is black and white.
 */
export const THEMES = {
  screen: {
    ink: "var(--drawing-ink,currentColor)",
    faint: "var(--drawing-faint,color-mix(in srgb,currentColor 62%,transparent))",
    accent: "var(--drawing-accent,LinkText)",
    paper: "var(--drawing-paper,Canvas)",
    wood: "var(--drawing-wood,color-mix(in srgb,CanvasText 7%,Canvas))",
    lit: "var(--drawing-lit,LinkText)",
    caution: "var(--drawing-caution,currentColor)",
  },
  print: { ink: "#000", faint: "#555", accent: "#000", paper: "#fff", wood: "#fff", lit: "#000", caution: "#000" },
} as const satisfies Record<string, Theme>;
