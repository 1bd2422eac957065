import { describe } from "vitest";
import { excelUnderTest } from "../excelUnderTest.ts";
import { plainCopies } from "../plainCopies.ts";

describe("a copy with plain values, on a strict stand-in", () => plainCopies(async () => excelUnderTest()));
