/** Whether a cell has a formula. Text that equals its own formula is text that begins with "=". */
export function isFormula(formula: unknown, value: unknown): formula is string {
  return typeof formula === "string" && formula.startsWith("=") && formula !== value;
}
