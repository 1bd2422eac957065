/**
 * Why the core has no value to give: a tag, and the figures that a message needs.
 *
 * The core never words anything for people; the worksheet function's `refuses` does.
 */
export class Reason {
  readonly tag: string;
  readonly figures: Readonly<Record<string, number | string>>;
  constructor(tag: string, figures: Readonly<Record<string, number | string>> = {}) {
    this.tag = tag;
    this.figures = figures;
  }
}
