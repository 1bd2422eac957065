import * as cjk from "cjk-regex";
import { describe, expect, it } from "vitest";
import * as ours from "../../../../src/hosts/embedded/replaced/cjkRegex.ts";

// Letters that this runtime's Unicode does not have yet, though the package may.
const UNKNOWN = /\p{Cn}/u;

describe.each(["letters", "punctuations", "all"] as const)("%s of Chinese, Japanese and Korean", (which) => {
  it("are those of the package", () => {
    const [theirs, own] = [cjk[which]().toRegExp(), ours[which]().toRegExp()];
    const apart: string[] = [];
    for (let code = 0; code <= 0x10ffff; code++) {
      if (code >= 0xd800 && code < 0xe000) continue;
      const letter = String.fromCodePoint(code);
      if (!UNKNOWN.test(letter) && theirs.test(letter) !== own.test(letter)) apart.push(code.toString(16));
    }
    expect(apart).toEqual([]);
  });
});
