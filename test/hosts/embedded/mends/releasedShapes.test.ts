import { expect, it } from "vitest";
import { loadBundled } from "../../../../src/build/loadBundled.ts";

it("a layer keeps nothing of a shape that has gone, and is drawn anew when one that is there moves", async () => {
  const { Layer, Rect, releasedShapes } = await loadBundled<typeof import("./shapes.ts")>(
    "test/hosts/embedded/mends/shapes.ts",
  );
  releasedShapes();
  const scene = { getParent: () => ({}), setObjectBehavior: () => undefined, removeObject: () => undefined };
  const layer = new Layer(scene as never);
  const kept = () =>
    (layer as unknown as { _collection: { _disposables: Set<unknown> } })._collection._disposables.size;
  const stays = new Rect("stays", { width: 10, height: 10 });
  layer.addObject(stays);
  const before = kept();
  for (let i = 0; i < 5; i++) {
    const goes = new Rect(`goes ${i}`, { width: 10, height: 10 });
    layer.addObject(goes);
    expect(kept()).toBe(before + 1);
    goes.dispose();
    expect(kept()).toBe(before);
  }
  layer.makeDirty(false);
  stays.translate(5, 5);
  expect(layer.isDirty()).toBe(true);
});
