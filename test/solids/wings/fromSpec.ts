import { jackTable } from "../../../functions/jackTable.ts";
import { members } from "../../../functions/members.ts";
import { plateMarks } from "../../../functions/plateMarks.ts";
import { takeOff } from "../../../functions/takeOff.ts";
import { Failure } from "../../../src/measure/result.ts";
import { frame, type Frame } from "../../../src/roof/frame/frame.ts";
import { pieces } from "../../../src/roof/frame/pieces.ts";
import type { RoofSpec, Section } from "../../../src/roof/frame/roofSpec.ts";
import { newReading } from "../../../src/registry/reading.ts";
import type { Section as Board } from "../member.ts";
import { tablesSaid } from "./fromTables.ts";
import { letterOf, type WingedPlan } from "./plan.ts";
import type { Said } from "./said.ts";

const section = ({ thickness, depth }: Board): Section => ({ name: `${thickness} x ${depth}`, thickness, depth });

/** A plan as the core takes it, without a block of cells. */
export function specOf(plan: WingedPlan): RoofSpec {
  return {
    unit: "in",
    span: plan.span,
    length: plan.length,
    pitch: plan.pitch.slope,
    endPitch: plan.endPitch.slope,
    ends: plan.ends.join(" and ") as RoofSpec["ends"],
    spacing: plan.spacing,
    overhang: plan.overhang,
    endOverhang: plan.endOverhang ?? null,
    rafter: section(plan.rafter),
    hip: section(plan.hip),
    ridge: section(plan.ridge),
    valley: section(plan.valley),
    seat: null,
    heel: plan.heel,
    setOutFrom: plan.setOutFrom,
    hipTop: plan.hipTop as RoofSpec["hipTop"],
    hipHead: plan.hipHead,
    correction: 0,
    endCorrection: 0,
    boards: [96, 120, 144, 168, 192, 216, 240],
    waste: 0,
    spares: 0,
    wings: plan.wings.map((wing, i) => ({
      letter: letterOf(i),
      wall: wing.wall,
      from: wing.from,
      out: wing.out,
      span: wing.span,
      end: wing.end,
      pitch: (wing.pitch ?? plan.pitch).slope,
      endPitch: wing.endPitch?.slope ?? null,
      overhang: wing.overhang ?? null,
      endOverhang: wing.endOverhang ?? null,
      ridge: section(wing.ridge ?? plan.ridge),
      longValley: wing.longValley ?? null,
      framing: "framed in",
    })),
  };
}

/** The frame of a plan that can be framed. */
export function frameOf(plan: WingedPlan): Frame {
  const made = frame(specOf(plan));
  if (made instanceof Failure) throw new Error(JSON.stringify(made.problem));
  return made;
}

/** What the tables say of a plan. */
export function fromSpec(plan: WingedPlan): Said {
  const made = frameOf(plan);
  const roof = { frame: made, pieces: pieces(made) };
  return tablesSaid(
    [members, jackTable, plateMarks, takeOff].map(
      ({ run }) => run([roof], newReading("roof")) as Parameters<typeof tablesSaid>[0][number],
    ),
  );
}
