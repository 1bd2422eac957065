import { describe, expect, it } from "vitest";
import { withoutPictures } from "../../src/build/withoutPictures.ts";

describe("withoutPictures", () => {
  const picture = (bytes: number) => `data:image/png;base64,${Buffer.alloc(bytes, 7).toString("base64")}`;
  it("leaves small pictures, and all that is no picture", () => {
    const script = `const a = "${picture(900)}", b = "data:image/" + ";base64," + x;`;
    expect(withoutPictures(script)).toBe(script);
  });
  it("puts a picture that nobody sees into the place of each large one", () => {
    const script = `f("${picture(9_000)}", "${picture(7_001)}", 1)`;
    expect(withoutPictures(script)).toMatch(/^f\("(data:image\/gif;base64,[\w+/]+)", "\1", 1\)$/);
  });
});
