import { expect, it } from "vitest";
import { START_INPUTS } from "../../../src/pane/state/fields.ts";
import { report } from "../../../src/pane/state/report.ts";
import { typedHere } from "../../../src/pane/state/typedHere.ts";

it.each([
  [
    `"x" was read, which is no pitch. Type 6, "6/12", "26.57°" or "50%".`,
    `"x" was read, which is no pitch. Type 6, 6/12, 26.57° or 50%.`,
  ],
  [
    `"long" was read. Type lengths such as 8', 12', or "8' to 20' by 2'".`,
    `"long" was read. Type lengths such as 8', 12', or 8' to 20' by 2'.`,
  ],
  [
    `The ends take more. Type 144' 0" for a pyramid, or 144' 3" or more.`,
    `The ends take more. Type 144' 0" for a pyramid, or 144' 3" or more.`,
  ],
  [`longPoint: "abc" was read, which is no length. Type 53.25.`, `"abc" was read, which is no length. Type 53.25.`],
  [`kerf: nothing was read. Type 1/8".`, `Nothing was read. Type 1/8".`],
  [`pitches: nothing was given. Type 6, or {4,6,8}.`, `Nothing was given. Type 6, or 4, 6, 8.`],
  [
    `pitches, value 2: "a" was read, which is no pitch. Type 6.`,
    `pitches, value 2: "a" was read, which is no pitch. Type 6.`,
  ],
  [`Span: nothing was read. Type 24'.`, `Span: nothing was read. Type 24'.`],
  [`J1: "x" was read, which is no length. Type 55 7/16.`, `J1: "x" was read, which is no length. Type 55 7/16.`],
  [`"6" and "8" stand there.`, `"6" and "8" stand there.`],
])("%s", (message, said) => {
  expect(typedHere(message)).toBe(said);
});

it("says at a field only what can be typed into it", () => {
  for (const bad of ["x", "0x8", "2 by 8"]) {
    const message = report({ ...START_INPUTS, Rafter: bad }).messages.Rafter!;
    const examples = message.slice(message.indexOf("Type ") + 5, -1).split(/, | or /);
    expect(examples.length).toBeGreaterThan(1);
    for (const example of examples)
      expect(report({ ...START_INPUTS, Rafter: example }).messages.Rafter ?? "", example).not.toMatch(/was read/);
  }
});
