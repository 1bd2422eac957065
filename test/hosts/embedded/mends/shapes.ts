export { Layer, Rect } from "@univerjs/preset-sheets-core";
export { releasedShapes } from "../../../../src/hosts/embedded/mends/releasedShapes.ts";
