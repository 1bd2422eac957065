import Module from "manifold-3d";
import type { Manifold } from "manifold-3d";
import type { Half } from "./half.ts";
import { add, scale, size, unit } from "./vector.ts";
import type { Frame } from "./frame.ts";
import type { Vec } from "./vector.ts";

export type Solid = Manifold;

const kernel = await Module();
kernel.setup();

/**
 * Where solids are made, trimmed and measured. Every solid it makes is its own until `sweep`, which gives the memory of all of them back:
 * the kernel's objects live outside the reach of the garbage collector.
 */
export class Shop {
  readonly #made: Solid[] = [];
  readonly #corners = new WeakMap<Solid, Vec[]>();

  #keep(solid: Solid): Solid {
    this.#made.push(solid);
    return solid;
  }

  /** Deletes every solid made here. */
  sweep(): void {
    for (const solid of this.#made.splice(0)) solid.delete();
  }

  /** How many solids wait for `sweep`. */
  get held(): number {
    return this.#made.length;
  }

  /** A board under a frame's top line: `thickness` wide about it, `depth` below it, from one length along it to another. */
  board({ at, along, left, top }: Frame, thickness: number, depth: number, from: number, to: number): Solid {
    const block = this.#keep(kernel.Manifold.cube([to - from, thickness, depth]));
    const corner = add(add(at, scale(along, from)), add(scale(left, -thickness / 2), scale(top, -depth)));
    return this.#keep(block.transform([...along, 0, ...left, 0, ...top, 0, ...corner, 1]));
  }

  /** What is left of a solid in front of every plane. */
  trim(solid: Solid, ...halves: readonly Half[]): Solid {
    // The kernel takes the offset as a distance, so the normal has to be of length 1.
    return halves.reduce(
      (rest, { normal, offset }) => this.#keep(rest.trimByPlane(unit(normal), offset / size(normal))),
      solid,
    );
  }

  /** What is left when everything in front of all the planes at once is cut out, as a notch is. */
  notch(solid: Solid, ...halves: readonly Half[]): Solid {
    const { min, max } = solid.boundingBox();
    const block = kernel.Manifold.cube([max[0] - min[0] + 2, max[1] - min[1] + 2, max[2] - min[2] + 2]);
    const waste = this.trim(this.#keep(this.#keep(block).translate([min[0] - 1, min[1] - 1, min[2] - 1])), ...halves);
    return waste.isEmpty() ? solid : this.#keep(solid.subtract(waste));
  }

  /** Two solids as one. */
  join(a: Solid, b: Solid): Solid {
    return this.#keep(a.add(b));
  }

  /** The volume that two solids share, cubic inches. */
  overlap(a: Solid, b: Solid): number {
    const shared = a.intersect(b);
    try {
      return shared.volume();
    } finally {
      shared.delete();
    }
  }

  /**
   * The corners of a solid in double precision.
   *
   * The kernel's meshes are single precision, but a warp is handed the doubles it holds: so a warp that moves nothing reads them. That takes
   * as long as cutting the solid did, so each is read once.
   */
  corners(solid: Solid): Vec[] {
    const known = this.#corners.get(solid);
    if (known) return [...known];
    let flat = new Float64Array();
    const same = solid.warpBatch((all, count) => {
      flat = Float64Array.from(all.subarray(0, 3 * count));
    });
    try {
      same.numVert(); // warps run when something is asked of the result
    } finally {
      same.delete();
    }
    const corners = Array.from({ length: flat.length / 3 }, (_, i): Vec => [
      flat[3 * i]!,
      flat[3 * i + 1]!,
      flat[3 * i + 2]!,
    ]);
    this.#corners.set(solid, corners);
    return [...corners];
  }

  /** The surface of a solid in triangles, counter-clockwise seen from outside, its corners in double precision. */
  triangles(solid: Solid): [Vec, Vec, Vec][] {
    const corners = this.corners(solid);
    const { triVerts, vertProperties, numProp } = solid.getMesh();
    // The mesh names its corners in the order in which a warp is handed them; its own copies are single precision.
    const at = (i: number): Vec => {
      const corner = corners[i]!;
      if (!corner.every((c, k) => Math.abs(c - vertProperties[i * numProp + k]!) <= 1e-6 * Math.abs(c) + 1e-6))
        throw new Error("The mesh's corners are in another order.");
      return corner;
    };
    return Array.from({ length: triVerts.length / 3 }, (_, i) => [
      at(triVerts[3 * i]!),
      at(triVerts[3 * i + 1]!),
      at(triVerts[3 * i + 2]!),
    ]);
  }
}
