import { conformance } from "../conformance.ts";
import { officeUnderTest } from "./officeUnderTest.ts";

conformance("Excel, on the vendor's own office.js,", officeUnderTest);
