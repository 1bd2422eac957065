import { rise } from "../cases.ts";
import { main, wingedCases } from "./cases.ts";
import type { RoofFigures, RafterFigures } from "./figures.ts";
import type { WingedPlan } from "./plan.ts";
import type { Said, SaidJack, SaidList, SaidMember, TakeOffItem } from "./said.ts";

/** What a mistake may look at: the roof, what was measured on it, and what another roof than it would say. */
export interface Seeded {
  readonly plan: WingedPlan;
  readonly figures: RoofFigures;
  readonly of: (plan: WingedPlan) => Said;
}

/** A way in which programs and careless books go wrong, seeded into what is said of a roof. */
export interface Mistake {
  readonly name: string;
  readonly plan: WingedPlan;
  readonly spoil: (said: Said, seeded: Seeded) => Said;
}

const lower = wingedCases["a T with a lower ridge"]!;
const unequal = wingedCases["a T at two pitches, long valley right"]!;
const flush = wingedCases["an L, flush left, lower ridge"]!;
const flatterEnds: WingedPlan = {
  ...main,
  length: 720,
  endPitch: rise(4.5),
  wings: [{ wall: "front", from: 84, out: 120, span: 168, end: "gable" }],
};

const members =
  (word: string, change: (row: SaidMember, seeded: Seeded) => Partial<SaidMember>) =>
  (said: Said, seeded: Seeded): Said => ({
    ...said,
    members: said.members.map((row) => (row.member === word ? { ...row, ...change(row, seeded) } : row)),
  });
const jacks =
  (change: (row: SaidJack, seeded: Seeded) => Partial<SaidJack>) =>
  (said: Said, seeded: Seeded): Said => ({
    ...said,
    jacks: said.jacks.map((row) => ({ ...row, ...change(row, seeded) })),
  });
const amount =
  (item: TakeOffItem, change: (amount: number, seeded: Seeded) => number) =>
  (said: Said, seeded: Seeded): Said => ({
    ...said,
    takeOff: { ...said.takeOff, [item]: change(said.takeOff[item]!, seeded) },
  });

const slope = ({ plan }: Seeded): number => plan.pitch.slope;
const wingSlope = ({ plan }: Seeded): number => (plan.wings[0]!.pitch ?? plan.pitch).slope;
/** Of the valley: tangent of its angle with the main plate line, and its own slope. */
const valleyTan = (seeded: Seeded): number => wingSlope(seeded) / slope(seeded);
const valleySlope = (seeded: Seeded): number => slope(seeded) * Math.sin(Math.atan(valleyTan(seeded)));
const along = (pitch: number): number => Math.hypot(1, pitch);
const footed = ({ footMark }: SaidJack): boolean => footMark > 0;

/** The mistakes in the order in which the trade's books make them; the overlay's is with the overlay. */
export const mistakes: readonly Mistake[] = [
  {
    name: "a valley dropped like a hip",
    plan: lower,
    spoil: members("valley", ({ heel }, seeded) => ({
      heel: heel - ((seeded.plan.valley.thickness / 2) * valleySlope(seeded)) / valleyTan(seeded),
    })),
  },
  {
    name: "a valley's tail pointed as a hip's",
    plan: lower,
    spoil: members("valley", ({ board }, seeded) => ({
      board: board - (seeded.plan.valley.thickness / 2) * along(valleySlope(seeded)),
    })),
  },
  {
    name: "the supporting valley as long as the shortened one's rule says",
    plan: lower,
    spoil: members("valley", ({ line, long, short }, { plan }) => ({
      long: line - (line - (long + short) / 2) + plan.valley.thickness / 2,
      short: line - (line - (long + short) / 2) + plan.valley.thickness / 2,
    })),
  },
  {
    name: "f and 90 - f exchanged",
    plan: unequal,
    spoil: jacks((row) => (footed(row) ? { footTilt: 90 - row.footTilt } : {})),
  },
  {
    name: "the reach with main and wing pitch exchanged",
    plan: unequal,
    spoil: members("ridge", (row, { plan }) => {
      const [w, m, n] = [plan.wings[0]!.span / 2, plan.pitch.slope, plan.wings[0]!.pitch!.slope];
      return row.line < 200 ? { line: row.line - (w * n) / m + (w * m) / n } : {};
    }),
  },
  {
    name: "the shortened valley cut square at two pitches",
    plan: unequal,
    spoil: members("valley", ({ tilts }) => ({ tilts: tilts.map((tilt) => (tilt < 20 ? 0 : tilt)).filter(Boolean) })),
  },
  {
    name: "the wing's ridge shortened half the valley's diagonal thickness at two pitches",
    plan: unequal,
    spoil: members("ridge", ({ line }, { plan }) => {
      const board = line + plan.rafter.thickness / 2 - plan.valley.thickness * Math.SQRT1_2;
      return line < 200 ? { long: board, short: board, board } : {};
    }),
  },
  {
    name: "the wing's ridge without the reach",
    plan: lower,
    spoil: members("ridge", ({ line }, { plan }) => {
      const { out } = plan.wings[0]!;
      return Math.abs(line - out - plan.wings[0]!.span / 2) < 1e-6
        ? { line: out, long: out, short: out, board: out }
        : {};
    }),
  },
  {
    name: "a valley jack shortened half the ridge's 45-degree thickness",
    plan: lower,
    spoil: members("valley jack", ({ long, short, board }, seeded) => {
      const more = (Math.SQRT2 - 1) * (seeded.plan.ridge.thickness / 2) * along(slope(seeded));
      return { long: long - more, short: short - more, board: board - more };
    }),
  },
  {
    name: "valley cripples stepping by one common difference",
    plan: lower,
    spoil: (said, seeded) => {
      const step = seeded.plan.spacing * along(slope(seeded));
      const longest = Math.max(
        ...said.members.filter(({ member }) => member === "valley cripple").map(({ long }) => long),
      );
      return members("valley cripple", ({ long, short }) => {
        const shorter = Math.round((longest - long) / (2 * step)) * step;
        return { long: longest - shorter, short: longest - shorter - (long - short) };
      })(said, seeded);
    },
  },
  {
    name: "hip-valley cripples alike though hip and valley are not parallel",
    plan: flatterEnds,
    spoil: (said, seeded) => {
      const first = said.members.find(({ member }) => member === "hip-valley cripple")!;
      return members("hip-valley cripple", () => ({ long: first.long, short: first.short, board: first.board }))(
        said,
        seeded,
      );
    },
  },
  {
    name: "the mark on the valley with the hip's minus",
    plan: lower,
    spoil: jacks((row, seeded) => {
      const back = seeded.plan.valley.thickness * valleyTan(seeded) * along(valleySlope(seeded));
      return footed(row) ? { footMark: row.footMark - back } : {};
    }),
  },
  {
    name: "the long point of a foot on the other side: the other hand",
    plan: lower,
    spoil: jacks((row) => (footed(row) ? { left: row.right, right: row.left } : {})),
  },
  {
    name: "cripples measured point to point, nothing taken off",
    plan: lower,
    spoil: members("valley cripple", ({ line, board, long }) => ({ long: line, board: board - long + line })),
  },
  {
    name: "a hip-valley cripple's hand from its hip",
    plan: flush,
    spoil: members("hip-valley cripple", ({ left, right }) => ({ left: right, right: left })),
  },
  {
    name: "flashing by the supporting valley",
    plan: lower,
    spoil: amount("valleys", (_, { figures }) => {
      const lines = figures.bearers.filter(({ kind }) => kind === "valley").map(({ line, tail }) => line + tail);
      return lines.reduce((a, b) => a + b, 0);
    }),
  },
  {
    name: "the wing's triangle cut from the main plane without the overhang",
    plan: lower,
    spoil: amount("main, plan", (area, seeded) => {
      const { span } = seeded.plan.wings[0]!;
      const out = (seeded.plan.overhang * slope(seeded)) / wingSlope(seeded);
      return area + ((span / 2 + out) ** 2 - (span / 2) ** 2) * valleyTan(seeded);
    }),
  },
  {
    name: "equal overhangs at unequal pitches",
    plan: unequal,
    spoil: (_, { plan, of }) =>
      of({
        ...plan,
        wings: plan.wings.map((wing) => ({ ...wing, overhang: plan.overhang, endOverhang: plan.overhang })),
      }),
  },
  {
    name: "equal spans taken for equal heights",
    plan: { ...unequal, wings: [{ ...unequal.wings[0]!, from: 110, span: unequal.span, out: 160 }] },
    spoil: (_, { plan, of }) =>
      of({ ...plan, wings: plan.wings.map(({ longValley: _long, ...wing }) => ({ ...wing, pitch: plan.pitch })) }),
  },
  {
    name: "a whole hip where it is broken",
    plan: flush,
    spoil: (said, seeded) => {
      const whole = said.members.find(({ member }) => member === "hip")!;
      return {
        ...said,
        members: said.members
          .filter(({ member }) => member !== "broken hip")
          .map((row) => (row === whole ? { ...row, plain: row.plain + 1 } : row)),
        takeOff: { ...said.takeOff, hips: said.takeOff.hips + whole.line - seeded.figures.edges.brokenHips },
      };
    },
  },
  {
    name: "a corner where a flush wing left none",
    plan: flush,
    spoil: (said) => ({
      ...said,
      lists: said.lists.map((list) =>
        /^Right/.test(list.name) ? { ...list, plates: 2 } : /^Left/.test(list.name) ? { ...list, plates: 0 } : list,
      ),
    }),
  },
  {
    name: "eaves counted through the mouth",
    plan: lower,
    spoil: amount("eaves", (eaves, { plan }) => eaves + plan.wings[0]!.span + 2 * plan.overhang),
  },
  {
    name: "commons, and the plate, counted through the mouth",
    plan: lower,
    spoil: (said, seeded) => {
      const bare = seeded.of({ ...seeded.plan, wings: [] });
      // A roof without wings has one name for both of its long plates.
      const front = {
        ...bare.lists.find(({ name }) => name === "Front" || name === "Main")!,
        name: "Front",
        plates: 1,
      };
      return {
        ...said,
        members: said.members.map((row) =>
          row.member === "common" && row.side === "Main"
            ? (bare.members.find((one) => one.member === "common") ?? row)
            : row,
        ),
        lists: [...said.lists.filter(({ name }) => !name.startsWith("Front")), front],
      };
    },
  },
  {
    name: "the rafter over the inner corner left out",
    plan: lower,
    spoil: (said, seeded) => {
      const over = (one: RafterFigures): boolean => one.overCorner;
      return seeded.figures.rafters
        .filter(over)
        .reduce(
          (rest, one): Said => ({
            ...rest,
            members: rest.members.map((row) =>
              row.member === "valley jack" && Math.abs(row.board - one.board) < 1e-6 && one.hand !== "plain"
                ? { ...row, [one.hand]: row[one.hand] - 1 }
                : row,
            ),
            takeOff: { ...rest.takeOff, pieces: rest.takeOff.pieces - 1, lineal: rest.takeOff.lineal - one.board },
          }),
          said,
        );
    },
  },
  {
    name: "a valley's board without its tail's two points",
    plan: lower,
    spoil: members("valley", ({ board }, seeded) => {
      const f = valleyTan(seeded);
      return { board: board - (seeded.plan.valley.thickness / 2) * Math.max(f, 1 / f) * along(valleySlope(seeded)) };
    }),
  },
  {
    name: "two thicknesses more of fascia at an inner corner too",
    plan: lower,
    spoil: amount("fascia corners", (_, { figures }) => figures.edges.outerCorners + figures.edges.innerCorners),
  },
];

/** A list of marks moved along its plate: a hook at the wrong end, or a plate of another length. */
export const moved = (list: SaidList, by: number): SaidList => ({
  ...list,
  marks: list.marks.map(({ at, member }) => ({ at: at + by, member })),
});
