import { afterEach, describe, expect, it } from "vitest";
import { readRoof } from "../../functions/arguments/roofModel.ts";
import { Failure } from "../../src/measure/result.ts";
import { polygonArea } from "../../src/geometry/polygon.ts";
import { outline } from "../../src/roof/frame/outline.ts";
import { degrees, disagreements, inches } from "./agreement.ts";
import type { Agreement } from "./agreement.ts";
import { spilled } from "./answers.ts";
import { assemble } from "./assemble.ts";
import type { Framed, Roof } from "./assemble.ts";
import { frameOf } from "./frame.ts";
import { beyond, opposite } from "./half.ts";
import { arris, extent } from "./measure.ts";
import { inside } from "./rafter.ts";
import { roofCases } from "./roofCases.ts";
import { blockOf } from "./roofPlan.ts";
import type { RoofPlan } from "./roofPlan.ts";
import { measured, rowFor } from "./schedule.ts";
import { sideOf } from "./settingOut.ts";
import { Shop } from "./shop.ts";
import { add, dot, scale, sub, UP } from "./vector.ts";

const shop = new Shop();
afterEach(() => shop.sweep());

const FASCIA = 4;
const CUTS = {
  square: [["Tail cut", "square"]],
  level: [
    ["Tail cut", "level"],
    ["Fascia", `0.75 x ${FASCIA}.0`],
  ],
} as const;

async function rowsOf(block: readonly (readonly unknown[])[]) {
  const [headings, ...rows] = await spilled("MEMBERS", block);
  return rows.map((row) => Object.fromEntries(row.map((cell, i) => [String(headings![i]), cell])));
}

/** A rafter whose plumb tail is sawn off once more: square to its slope through the tail's tip, or level as deep below it as the fascia. */
function sawnTail(piece: Framed, cut: keyof typeof CUTS): Framed {
  const at = piece.at!;
  const tip = arris(piece, shop.corners(piece.solid), "left").low;
  if (cut === "square") return { ...piece, solid: shop.trim(piece.solid, beyond(piece.frame.along, tip)) };
  const soffit = beyond(scale(UP, -1), sub(tip, [0, 0, FASCIA]));
  return { ...piece, solid: shop.notch(piece.solid, soffit, opposite(inside(at.corner, sideOf(at)))) };
}

/** Boards of all rafters, and the side faces that are drawn of those cut square across, against what is left of the solids. */
async function against(plan: RoofPlan, cut: keyof typeof CUTS): Promise<Agreement[]> {
  const block = [...blockOf(plan), ...CUTS[cut]];
  const rows = await rowsOf(block);
  const model = readRoof("roof", block);
  if (model instanceof Failure) throw new Error(JSON.stringify(model.problem));
  return assemble(shop, plan)
    .members.filter(({ kind }) => ["common", "king common", "jack"].includes(kind))
    .flatMap((piece) => {
      const row = rowFor(rows, measured(shop, piece))!;
      const sawn = sawnTail(piece, cut);
      const board = inches(
        `${piece.name}: board`,
        extent(sawn, shop.corners(sawn.solid)),
        Number(row["Shortest board"]),
      );
      if (piece.kind === "jack") return [board];
      const drawn = outline(
        model.frame,
        model.pieces.find(({ mark }) => mark === row["Piece"])!,
        "plain",
      );
      return [
        board,
        inches(`${piece.name}: face`, sawn.solid.volume() / piece.thickness, Math.abs(polygonArea(drawn.left.polygon))),
      ];
    });
}

describe("tails of a block that are square or level, as solids", { timeout: 60_000 }, () => {
  const plans = Object.entries(roofCases).filter(([, plan]) => plan.overhang > 0);
  it.each(plans.flatMap(([name, plan]) => (["square", "level"] as const).map((cut) => [name, cut, plan] as const)))(
    "%s, %s: boards and faces",
    async (_, cut, plan) => {
      const found = await against(plan, cut);
      expect(found.length).toBeGreaterThan(10);
      expect(disagreements(found)).toEqual([]);
    },
  );

  it("a short tail whose square or level cut ends at the notch", async () => {
    const plan = { ...roofCases["regular"]!, overhang: 2.5 };
    expect(disagreements(await against(plan, "square"))).toEqual([]);
    expect(disagreements(await against({ ...plan, overhang: 4 }, "level"))).toEqual([]);
  });

  it("finds a cut that is not the one asked for", async () => {
    const plan = roofCases["regular"]!;
    const plumb = await rowsOf(blockOf(plan));
    const [first] = assemble(shop, plan).members.filter(({ kind }) => kind === "common");
    const board = extent(sawnTail(first!, "square"), shop.corners(sawnTail(first!, "square").solid));
    expect(Math.abs(board - Number(rowFor(plumb, measured(shop, first!))!["Shortest board"]))).toBeGreaterThan(1);
  });
});

/** A long board over a plate, its outer face on the plate line, sawn off at the nearest rafter and at the hip: its two faces and the saw's tilt. */
function blockAt({ members }: Roof, hip: Framed, which: 0 | 1, thickness: number) {
  const { corner } = hip.at!;
  const side = corner.sides[which];
  const jacks = members.filter(
    ({ kind, at }) => kind !== "hip" && at !== null && at.corner === corner && sideOf(at) === side,
  );
  const nearest = Math.min(...jacks.map(({ at }) => at!.offset));
  const frame = frameOf(add(corner.at, scale(side.inward, thickness / 2)), side.plate);
  const along = (by: number) => add(corner.at, scale(side.plate, by));
  const out = dot(hip.frame.left, side.plate) > 0 ? hip.frame.left : scale(hip.frame.left, -1);
  const solid = shop.trim(
    shop.board(frame, thickness, 4, -60, nearest),
    beyond(out, add(hip.frame.at, scale(out, hip.thickness / 2))),
    opposite(beyond(side.plate, along(nearest - thickness / 2))),
  );
  const corners = shop
    .corners(solid)
    .map((c) => ({ x: dot(side.plate, sub(c, corner.at)), y: dot(side.inward, sub(c, corner.at)) }));
  const face = (y: number) => corners.filter((c) => Math.abs(c.y - y) < 1e-6).map(({ x }) => x);
  const lengthAt = (y: number) => Math.max(...face(y)) - Math.min(...face(y));
  const [outer, inner] = [lengthAt(0), lengthAt(thickness)];
  return { outer, inner, tilt: (Math.atan((outer - inner) / thickness) * 180) / Math.PI };
}

describe("blocks beside a hip, as solids", { timeout: 60_000 }, () => {
  it.each(["regular", "steeper ends", "steeper ends, shifted hips", "steeper ends, backed hips", "flatter ends"])(
    "%s: both faces, the tilt and the count",
    async (name) => {
      const plan = roofCases[name]!;
      const roof = assemble(shop, plan);
      const rows = (await rowsOf([...blockOf(plan), ["Blocking", "corner"]])).filter(
        (row) => row["Member"] === "block",
      );
      const found = roof.members
        .filter(({ kind }) => kind === "hip")
        .flatMap((hip) => ([0, 1] as const).map((which) => blockAt(roof, hip, which, plan.rafter.thickness)));
      const agreements = found.flatMap(({ outer, inner, tilt }) => {
        const row = rows.find((one) => Math.abs(Number(one["Long point"]) - outer) < 1e-6);
        return [
          inches(`outer face ${outer}`, outer, Number(row?.["Long point"])),
          inches("inner face", inner, Number(row?.["Short point"])),
          degrees("tilt", tilt, Number(row?.["Saw tilt"])),
        ];
      });
      expect(disagreements(agreements)).toEqual([]);
      expect(rows.reduce((sum, row) => sum + Number(row["Left"]) + Number(row["Right"]), 0)).toBe(8);
    },
  );
});
