import fc from "fast-check";
import { beforeEach } from "vitest";
import { WHOLE } from "./rooms.ts";

/** One failure of a random test is enough here; the search for the smallest one would be most of the run. */
fc.configureGlobal({ endOnFailure: true });

/** A fault that is come by outside of every test makes Stryker switch it on before the files are loaded, and run all of them. */
if (process.env[WHOLE])
  beforeEach(() => {
    const stryker = (globalThis as { __stryker__?: { currentTestId?: string } }).__stryker__;
    if (stryker) stryker.currentTestId = undefined;
  });
