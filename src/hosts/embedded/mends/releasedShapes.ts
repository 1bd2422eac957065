import type { IDisposable } from "@univerjs/core";
import type { Rect } from "@univerjs/preset-sheets-core";
import { Layer } from "@univerjs/preset-sheets-core";

/** A layer of what the sheet draws, with what is private to it. */
interface Shapes {
  makeDirty(): unknown;
  disposeWithMe(part: { unsubscribe(): void }): IDisposable;
  _layerBehavior(shape: Pick<Rect, "onTransformChange$" | "onDispose$" | "layer">): void;
}

/**
 * Lets go of a drawn shape that has gone.
 *
 * In 0.25.1 a layer keeps, for as long as the page is open, how it listened to every shape that was ever on it, and some come
 * and go with the edits.
 */
export function releasedShapes(): void {
  const shapes = Layer.prototype as unknown as Shapes;
  shapes._layerBehavior = function (shape) {
    const listening = this.disposeWithMe(shape.onTransformChange$.subscribeEvent(() => void this.makeDirty()));
    shape.onDispose$.subscribeEvent(() => listening.dispose());
    shape.layer = this as unknown as Layer;
  };
}
