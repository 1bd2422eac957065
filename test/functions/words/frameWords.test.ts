import { describe, expect, it } from "vitest";
import { asked, number, refusal, rows } from "../asked.ts";

type Given = Readonly<Record<string, unknown>>;
const usual: Given = { Span: `24'`, Length: `40'`, Pitch: 6 };
const block = (given: Given) => Object.entries({ ...usual, ...given });
const metric: Given = { Span: "7.2 m", Length: "12 m", Pitch: "30°", Unit: "mm" };

interface Limit {
  readonly given: Given;
  readonly row: string;
  /** The message's limit, as typed back into the row, is answered; with `beyond` (a little less or more, past it) the same refusal stays. */
  readonly limit: RegExp;
  readonly answered: (limit: string) => unknown;
  readonly refused: unknown;
}

/** Every refusal that a block can come to, with the limit that its message names. What just keeps to it is framed, and what just misses it is not. */
const limits: readonly (readonly [string, Limit])[] = [
  [
    "a heel of the plumb depth",
    { given: { Heel: 6.2 }, row: "Heel", limit: /less than (\S+ \S+"),/, answered: (l) => l, refused: `6 3/16"` },
  ],
  [
    "a seat that takes the heel",
    {
      given: { Seat: 13, "Hip top": "backed" },
      row: "Seat",
      limit: /less than (.+?),/,
      answered: (l) => l,
      refused: 12.3,
    },
  ],
  [
    "a seat that leaves less than the hip's drop",
    { given: { Seat: 12 }, row: "Seat", limit: /less than (.+?),/, answered: (l) => l, refused: 11.9 },
  ],
  [
    "a heel of less than the hip's drop",
    { given: { Heel: 0.2 }, row: "Heel", limit: /more than (.+?),/, answered: (l) => l, refused: 0.26 },
  ],
  [
    "no seat on the flatter side",
    {
      given: { Pitch: 3, "End pitch": 12, Seat: 1, Hip: "2x12" },
      row: "Seat",
      limit: /Seat of more than (.+?),/,
      answered: (l) => l,
      refused: 2.1,
    },
  ],
  [
    "a length shorter than its hipped ends",
    {
      given: { Length: `20'` },
      row: "Length",
      limit: /, or (.+?) or more/,
      answered: (l) => l,
      refused: `23' 11 15/16"`,
    },
  ],
  [
    "a length shorter than its hipped ends, for a pyramid",
    {
      given: { "End pitch": 7, Length: `20'` },
      row: "Length",
      limit: /Type (.+?) for a pyramid/,
      answered: (l) => l,
      refused: `20' 6 13/16"`,
    },
  ],
  [
    "a length shorter than its one hipped end",
    {
      given: { Length: `11'`, Ends: "hip and gable" },
      row: "Length",
      limit: /Type (.+?) or more/,
      answered: (l) => l,
      refused: `11' 11 15/16"`,
    },
  ],
  [
    "a ridge of under two king commons",
    {
      given: { Length: `24' 1"` },
      row: "Length",
      limit: /, or (.+?) or more/,
      answered: (l) => l,
      refused: `24' 2 15/16"`,
    },
  ],
  [
    "a ridge of under two king commons, for a pyramid",
    {
      given: { Length: `24' 1"` },
      row: "Length",
      limit: /Type (.+?) for a pyramid/,
      answered: (l) => l,
      refused: `24' 1/16"`,
    },
  ],
  [
    "a pyramid whose length is between the marks of a tape",
    {
      given: { Pitch: 6, "End pitch": 7, Length: `20' 7"` },
      row: "Length",
      limit: /Type (.+?) for a pyramid/,
      answered: (l) => l,
      refused: `20' 6 7/8"`,
    },
  ],
  [
    "a ridge too short for a gable",
    {
      given: { Length: `12' 1"`, Ends: "hip and gable" },
      row: "Length",
      limit: /Type (.+?) or more/,
      answered: (l) => l,
      refused: `12' 5 15/16"`,
    },
  ],
  [
    "a spacing without room",
    { given: { Spacing: 2 }, row: "Spacing", limit: /Type (.+?) or more/, answered: (l) => l, refused: 2.99 },
  ],
  [
    "a spacing as wide as the run",
    {
      given: { Spacing: `12'` },
      row: "Spacing",
      limit: /run of (.+?),/,
      answered: (l) => number("INCHES", l) - 12,
      refused: 144,
    },
  ],
  [
    "a hip too shallow for the plate",
    {
      given: { Heel: 5, Hip: "1.5 x 3" },
      row: "Hip",
      limit: /at least (.+?) deep/,
      answered: (l) => `1.5 x ${Number.parseInt(l) + 1}.0`,
      refused: "1.5 x 4.4",
    },
  ],
  [
    "more rafters along a plate than any roof has",
    { given: { Length: 30_000 }, row: "Length", limit: /Type (.+?) or less/, answered: (l) => l, refused: `2000' 1"` },
  ],
  [
    "more rafters along an end than any roof has",
    {
      given: { Span: `260'`, Length: 2900, Spacing: 3, Rafter: "1x12", Hip: "2x14", Ends: "hip and gable" },
      row: "Span",
      limit: /Type (.+?) or less/,
      answered: (l) => l,
      refused: `250' 1"`,
    },
  ],
  // The shortest jack's short point at 24.8084 in: 22.1893 in level (24 - 0.75 - 0.75 x root 2), over the cosine of 26.57 degrees.
  [
    "a correction that leaves nothing of a jack",
    {
      given: { Correction: -100 },
      row: "Correction",
      limit: /more than (.+?)\.$/,
      answered: (l) => l,
      refused: -24.8085,
    },
  ],
  [
    "an end correction that leaves nothing of a jack",
    {
      given: { "End correction": -25 },
      row: "End correction",
      limit: /more than (.+?)\.$/,
      answered: (l) => l,
      refused: -24.8085,
    },
  ],
  // A step at 24 in on 6 in 12 is 26.8328 in: the framing-square table has 26.83.
  [
    "a length typed for a correction",
    {
      given: { Correction: 133.8 },
      row: "Correction",
      limit: /less than (.+?) either way/,
      answered: (l) => l,
      refused: 26.9,
    },
  ],
  [
    "millimeters",
    {
      given: { ...metric, Spacing: "70 mm" },
      row: "Spacing",
      limit: /Type (.+?) or more/,
      answered: (l) => l,
      refused: "75 mm",
    },
  ],
];

describe("the limit that a refusal names", () => {
  it.each(limits)("%s", (_, { given, row, limit, answered, refused }) => {
    const message = refusal("MEMBERS", block(given));
    expect(message.startsWith(`${row}: `), message).toBe(true);
    const [, named] = limit.exec(message) ?? [];
    expect(named, message).toBeDefined();
    expect(rows("MEMBERS", block({ ...given, [row]: answered(named!) })).length).toBeGreaterThan(1);
    expect(refusal("MEMBERS", block({ ...given, [row]: refused })).startsWith(`${row}: `)).toBe(true);
  });

  it("is in the block's unit", () => {
    expect(refusal("MEMBERS", block({ ...metric, Spacing: "70 mm" }))).toContain("Type 76 mm or more");
    expect(refusal("MEMBERS", block({ Spacing: 2 }))).toContain(`Type 3" or more`);
  });
});

describe("refusals that name no one limit", () => {
  it.each<[string, Given, string, string]>([
    ["a span too narrow for one jack", { Spacing: `11' 11"` }, "Span", "smaller Spacing"],
    ["hips on a ridge that a pyramid lacks", { Length: `24'`, "Hip head": "ridge" }, "Hip head", "king commons"],
    ["hips on no ridge", { Ridge: "none", "Hip head": "ridge" }, "Hip head", "king commons"],
  ])("%s", (_, given, row, words) => {
    const message = refusal("MEMBERS", block(given));
    expect(message.startsWith(`${row}: `), message).toBe(true);
    expect(message).toContain(words);
  });

  it("the same roof is framed by every table or by none", () => {
    for (const table of ["JACKTABLE", "MEMBERS"])
      expect(asked(table, block({ Spacing: 2 }))).toHaveProperty("error", "#VALUE!");
  });
});
