import { alongSlope } from "../../geometry/alongSlope.ts";
import { faceStretches } from "../frame/surface.ts";
import type { PlaneGroup } from "./planeGroups.ts";

/** A sheet of sheathing: its long side lies along the eave. */
export interface Sheet {
  readonly long: number;
  readonly wide: number;
}

/** One course of sheets across one plane. */
export interface Course {
  readonly side: PlaneGroup["side"];
  /** Of the planes of a kind which one, and of its courses which one, both from 1 at the eave. */
  readonly plane: number;
  readonly course: number;
  /** Along the slope from the eave to its lower edge. */
  readonly from: number;
  /** Where it starts, along the plate line from the left end. */
  readonly along: number;
  /** From the farthest point of its one end to that of the other: its lower edge, but beside a valley. */
  readonly length: number;
  /** Off-cut that it starts with, whole sheets after it, and what is left of the last one. */
  readonly start: number;
  readonly sheets: number;
  readonly offCut: number;
}

/**
 * Sheets course by course: along the eave, courses up the slope, each as long as it reaches. A wing parts the courses that it stands in.
 *
 * An off-cut of two bays or more starts the next course, or the next plane; a shorter one is waste, and so are the
 * triangles cut off along the hips. A course that is ripped at the ridge takes whole sheets (common practice, no source).
 */
export function sheathingCourses(groups: readonly PlaneGroup[], sheet: Sheet, bay: number): readonly Course[] {
  const courses: Course[] = [];
  let offCut = 0;
  for (const { side, faces } of groups) {
    for (const [i, face] of faces.entries()) {
      const along = alongSlope(face.plane.pitch);
      const height = face.top * along;
      for (let course = 1; (course - 1) * sheet.wide < height * (1 - NONE); course++) {
        const from = (course - 1) * sheet.wide;
        for (const stretch of faceStretches(face, from / along, (from + sheet.wide) / along)) {
          const length = stretch.to - stretch.from;
          const start = Math.min(offCut, length);
          const sheets = Math.max(0, Math.ceil((length - start) / sheet.long - NONE));
          const left = sheets === 0 ? offCut - start : Math.max(0, start + sheets * sheet.long - length);
          offCut = left >= 2 * bay * (1 - NONE) ? left : 0;
          courses.push({ side, plane: i + 1, course, from, along: stretch.from, length, start, sheets, offCut: left });
        }
      }
    }
  }
  return courses;
}

/** Of a course or a sheet: far below a saw's kerf, far above the last bit of a double. */
const NONE = 1e-9;
