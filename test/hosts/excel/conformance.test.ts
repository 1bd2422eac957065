import { conformance } from "../conformance.ts";
import { excelUnderTest } from "../excelUnderTest.ts";

conformance("Excel, on a strict stand-in,", async () => excelUnderTest());
