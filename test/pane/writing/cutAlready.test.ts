import { expect, it } from "vitest";
import { EMPTY_INPUTS, START_INPUTS, type Inputs } from "../../../src/pane/state/fields.ts";
import { cutAlready } from "../../../src/pane/writing/cutAlready.ts";
import { texts } from "../../../src/pane/words/texts.ts";

// 32 jacks, 12 commons on the sides, 2 king commons at the ends, 4 hips and the ridge: 51 pieces.
const roof: Inputs = { ...START_INPUTS, Span: "20'", Length: "30'" };

const metric = { ...EMPTY_INPUTS, Span: "6 m", Length: "9 m", Pitch: "6", Unit: "mm" };

it.each<[string, Partial<Inputs>, [number, number, number]]>([
  ["two feet more of ridge, with a pair of commons", { Length: "32'" }, [50, 0, 3]],
  ["two feet less of it", { Length: "28'" }, [48, 1, 0]],
  ["longer tails, of all but the ridge", { Overhang: "20" }, [1, 0, 50]],
  ["shorter ones", { Overhang: "16" }, [1, 50, 0]],
  ["a board along each eave", { Fascia: "2x8" }, [51, 0, 4]],
])("counts what serves, is cut shorter or cut anew: %s", (_, more, [serve, shorten, anew]) =>
  expect(cutAlready(roof, { ...roof, ...more })).toEqual([texts.ask.cutAlready({ serve, shorten, anew })]),
);

it("counts alike in a metric roof", () => expect(cutAlready(metric, { ...metric, Overhang: "450" })).toHaveLength(1));

it.each<[string, Inputs, Inputs]>([
  ["no piece is another", roof, { ...roof, "Job name": "Barn" }],
  ["the old roof cannot be framed", { ...roof, Span: "" }, roof],
  ["the new roof cannot be framed", roof, { ...roof, Span: "wide" }],
  ["its unit is another", roof, metric],
])("says nothing where %s", (_, before, after) => expect(cutAlready(before, after)).toEqual([]));
