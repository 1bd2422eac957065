import { NAMESPACE } from "../registry/worksheetFunction.ts";

// Functions newer than the file format: a file names them with this mark, and without it Excel does not know them.
const NEWER = new Set(
  (
    "ACOT ACOTH ARABIC BASE BITAND BITLSHIFT BITOR BITRSHIFT BITXOR BYCOL BYROW CEILING.MATH CHOOSECOLS CHOOSEROWS COMBINA CONCAT COT COTH CSC CSCH DAYS DECIMAL DROP " +
    "EXPAND FLOOR.MATH FORMULATEXT HSTACK IFNA IFS ISFORMULA ISOWEEKNUM LAMBDA LET MAKEARRAY MAP MAXIFS MINIFS MUNIT NUMBERVALUE PERMUTATIONA RANDARRAY REDUCE SCAN SEC SECH " +
    "SEQUENCE SHEET SHEETS SORTBY SWITCH TAKE TEXTAFTER TEXTBEFORE TEXTJOIN TEXTSPLIT TOCOL TOROW UNICHAR UNICODE UNIQUE VALUETOTEXT VSTACK WRAPCOLS WRAPROWS XLOOKUP XMATCH XOR"
  ).split(" "),
);
const NEWEST = new Set(["FILTER", "SORT"]);

const OURS = `_xldudf_${NAMESPACE}_`;
// Texts and quoted sheet names are stepped over whole, so that nothing in them is taken for a function.
const PARTS = /"(?:[^"]|"")*"|'(?:[^']|'')*'|([A-Za-z_][\w.]*)(?=\s*\()/g;

/**
 * A formula as a file holds it: without "=", and add-in functions and functions newer than the format under their stored names.
 *
 * The name of a call of ours is the one seen in public files; that Excel takes it from a file that it did not write itself is not proved here.
 *
 * @example
 * storedFormula('=RAFTER.TAPE(IFS(A1>0,A1))&"RAFTER.TAPE("') // => '_xldudf_RAFTER_TAPE(_xlfn.IFS(A1>0,A1))&"RAFTER.TAPE("'
 */
export function storedFormula(formula: string): string {
  return formula.replace(/^=/, "").replace(PARTS, (part, name?: string) => {
    if (name === undefined) return part;
    const upper = name.toUpperCase();
    if (upper.startsWith(`${NAMESPACE}.`)) return OURS + upper.slice(NAMESPACE.length + 1);
    if (NEWEST.has(upper)) return `_xlfn._xlws.${upper}`;
    return NEWER.has(upper) ? `_xlfn.${upper}` : name;
  });
}

/**
 * Whether a typed formula calls a function of ours.
 *
 * @example
 * callsOurs("=SUM(RAFTER.JACKLEN(6,48,1.5,1.5))") // => true
 * callsOurs('="RAFTER.TAPE("') // => false
 */
export function callsOurs(formula: string): boolean {
  return [...formula.matchAll(PARTS)].some(([, name]) => name?.toUpperCase().startsWith(`${NAMESPACE}.`));
}

/**
 * A stored formula as a person types it.
 *
 * @example
 * typedFormula("_xldudf_RAFTER_JACKLEN(6,_xlfn.IFS(A1>0,A1))") // => "=RAFTER.JACKLEN(6,IFS(A1>0,A1))"
 */
export function typedFormula(stored: string): string {
  const typed = stored.replace(PARTS, (part, name?: string) => {
    if (name === undefined) return part;
    if (name.toUpperCase().startsWith(OURS.toUpperCase()))
      return `${NAMESPACE}.${name.slice(OURS.length).toUpperCase()}`;
    return name.replace(/^(_xlfn\.)?(_xlws\.)?(_xlfn\.)?/i, "");
  });
  return `=${typed.replace(/^=/, "")}`;
}
