import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { inUnit } from "../../../src/pane/state/changeUnit.ts";
import { START_INPUTS } from "../../../src/pane/state/fields.ts";
import { report } from "../../../src/pane/state/report.ts";

const spec = report(START_INPUTS).model!.frame.spec;

describe("inUnit", () => {
  it("turns lengths into millimeters and keeps names of sizes", () => {
    expect(inUnit(START_INPUTS, spec, "mm")).toMatchObject({
      Span: "7315",
      Length: "10973",
      Spacing: "610",
      Seat: "89",
      Rafter: "2x8",
      Boards: "2.4 m to 7.2 m by 0.6 m",
      Unit: "mm",
      Heel: "",
    });
  });
  it("turns actual sizes, a metric one into its nominal name where it has one", () => {
    const metric = {
      ...START_INPUTS,
      Span: "7315",
      Length: "10973",
      Spacing: "610",
      Overhang: "457",
      Seat: "89",
      Rafter: "38 x 184",
      Hip: "45 x 240",
      Ridge: "none",
      Boards: "",
      Unit: "mm",
    };
    expect(inUnit(metric, report(metric).model!.frame.spec, "in")).toMatchObject({
      Span: `24' 0"`,
      Rafter: "2x8",
      Hip: "1.75 x 9.4375 in",
      Ridge: "none",
      Unit: "in",
    });
  });
  it("gives a roof that can be read, whose span differs by less than half a millimeter", () => {
    fc.assert(
      fc.property(fc.integer({ min: 160, max: 600 }), (span) => {
        const inputs = { ...START_INPUTS, Span: String(span), Length: String(span * 2) };
        const turned = inUnit(inputs, report(inputs).model!.frame.spec, "mm");
        expect(Math.abs(report(turned).model!.frame.spec.span - span * 25.4)).toBeLessThanOrEqual(0.5);
      }),
    );
  });
});
