/** A roof block as cells. */
export type Block = readonly (readonly (string | number)[])[];
