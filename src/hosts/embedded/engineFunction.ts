import type { BaseValueObject, FunctionVariantType } from "@univerjs/engine-formula";
import { BaseFunction, ErrorType, NumberValueObject } from "@univerjs/engine-formula";
import type { Problem } from "../../../functions/problem.ts";
import { messageOf } from "../../../functions/words/problemText.ts";
import type { Answer } from "../../registry/call.ts";
import { call } from "../../registry/call.ts";
import { CellError, Refusal } from "../../registry/refusal.ts";
import type { WorksheetFunction } from "../../registry/worksheetFunction.ts";
import { NAMESPACE } from "../../registry/worksheetFunction.ts";
import { input } from "./input.ts";
import type { LateAnswers } from "./lateAnswers.ts";
import type { Messages } from "./messages.ts";
import type { Place } from "./output.ts";
import { errorOutput, output } from "./output.ts";

export type EngineFunction = [new (name: string) => BaseFunction, string];

/** What every registered function shares. */
export interface Calls {
  readonly messages: Messages;
  readonly late: LateAnswers;
}

/**
 * A worksheet function as the engine runs it. The number of arguments is left to `call`, whose refusal says what is missing.
 *
 * Nothing may be thrown into the engine: one uncaught error stops every later calculation.
 */
export function engineFunction(definition: WorksheetFunction, { messages, late }: Calls): EngineFunction {
  const blocks = definition.parameters.map((parameter) => parameter.block === true);

  class Registered extends BaseFunction {
    override needsReferenceObject = true;
    // Else the engine reads the text "6/12" as a date before we see it.
    override isArgumentsIgnoreNumberPattern() {
      return true;
    }
    override calculate(...variants: FunctionVariantType[]): BaseValueObject {
      try {
        const cells = new Array<unknown>(variants.length);
        for (let i = 0; i < variants.length; i++) cells[i] = input(variants[i]!, blocks[i] === true);
        const answer = definition.asynchronous ? this.#late(cells) : call(definition, cells);
        if (typeof answer === "number") return NumberValueObject.create(answer);
        return this.#show(answer as Answer | null);
      } catch (fault) {
        return this.#show(faulty(definition, fault));
      }
    }
    #late(cells: readonly unknown[]): Answer | null {
      const start = async () => call(definition, cells);
      return late.get(`${definition.name}${JSON.stringify(cells)}`, this.#place(), () =>
        start().catch((fault: unknown) => faulty(definition, fault)),
      );
    }
    #show(answer: Answer | null): BaseValueObject {
      if (answer === null) return errorOutput(ErrorType.CONNECT);
      if (answer instanceof CellError) return errorOutput(answer.error);
      if (!(answer instanceof Refusal)) return output(answer, this.#place());
      messages.refused(this.#place(), messageOf(answer));
      return errorOutput(answer.error);
    }
    #place(): Place {
      return { unit: this.unitId ?? "", sheet: this.subUnitId ?? "", row: this.row, column: this.column };
    }
  }
  return [Registered, `${NAMESPACE}.${definition.name}`];
}

function faulty(definition: WorksheetFunction, fault: unknown): Refusal {
  return new Refusal({ kind: "fault", name: definition.name, thrown: String(fault) } satisfies Problem, null, null);
}
