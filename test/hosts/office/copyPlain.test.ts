import { describe } from "vitest";
import { plainCopies } from "../plainCopies.ts";
import { officeUnderTest } from "./officeUnderTest.ts";

describe("a copy with plain values, on the vendor's own office.js", () => plainCopies(officeUnderTest));
