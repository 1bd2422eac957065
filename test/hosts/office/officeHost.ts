import { FakeBook, type BookEvent } from "../fakeBook.ts";
import { FakeSheet } from "../fakeSheet.ts";
import type { Native } from "./loadOffice.ts";
import { ACTION, carryOut, type Request } from "./richApi.ts";
import { WireBook } from "./wireBook.ts";

/** Requirement sets that the host says it has: those that the manifest asks for, and what office.js asks for itself. */
export const SETS = {
  ExcelApi: "1.12",
  SharedRuntime: "1.1",
  CustomFunctionsRuntime: "1.3",
  CustomFunctions: "1.7",
  RichApiRuntime: "1.2",
  RichApiRuntimeFlag: "1.2",
  DelayForCellEdit: "1.1",
  DialogApi: "1.1",
  OpenBrowserWindowApi: "1.1",
};
/** Excel on the web refuses more in a request or an answer ("Resource limits and performance optimization for Office Add-ins"). */
const MOST_BYTES = 5_000_000;
const EXECUTE = { RICH_API: 93 };
const EVENT = { SELECTION: 2, RICH_API_MESSAGE: 33 };
const MESSAGE: Record<Exclude<BookEvent, "selection">, number> = { change: 10, calculated: 16 };

/** What one request weighed and asked. */
export interface Seen {
  readonly bytes: number;
  readonly answer: number;
  readonly flags: number;
  readonly actions: number;
  /** What it did beside looking, each kind once. */
  readonly did: readonly string[];
}

/** What the runtime sent back for a call of a custom function. */
export interface Outcome {
  readonly ok: boolean;
  readonly value: unknown;
  readonly code: number | undefined;
}

/** The Excel that the vendor's office.js talks to: the native side of `window.external`, over a workbook of plain data. */
export class OfficeHost extends FakeBook implements Native {
  seen: Seen[] = [];
  /** Whether the runtime has said that functions may be called. */
  functionsReady = false;
  #wire = new WireBook(this);
  #calls = 0;
  readonly #handlers = new Map<number, (id: number, payload: unknown) => void>();
  readonly #waiting = new Map<number, (outcome: Outcome) => void>();

  /** A new workbook under the same office.js. */
  fresh(): void {
    this.sheets = [new FakeSheet("Sheet1")];
    this.active = this.sheets[0]!;
    this.selected = { row: 0, column: 0, rows: 1, columns: 1 };
    this.chartSelected = false;
    this.broken = () => false;
    this.spilledFormulas = "value";
    this.settings.clear();
    this.calculationMode = "Automatic";
    this.seen = [];
    this.#wire = new WireBook(this);
  }
  /** Objects that clients keep and have not let go. */
  get kept(): number {
    return this.#wire.references.size;
  }

  GetHostInfo = () => "excel|win32|16.01|en-US||||3";
  GetContext = () => ({
    GetAppType: () => 1,
    GetSolutionRef: () => "addin",
    GetAppVersionMajor: () => 16,
    GetAppVersionMinor: () => 1,
    GetAppUILocale: () => "en-US",
    GetAppDataLocale: () => "en-US",
    GetDocUrl: () => "Bid.xlsx",
    GetAppCapabilities: () => 0,
    GetActivationMode: () => 1,
    GetControlIntegrationLevel: () => 1,
    GetSolutionToken: () => "",
    GetSupportedMatrix: () => JSON.stringify(SETS),
    GetInitialDisplayMode: () => 0,
    GetHostFullVersion: () => "16.0.17000.0",
    GetSettings: () => ({ Read: () => undefined }),
  });

  Execute = (id: number, params: unknown, callback: (args: unknown) => unknown): void => {
    if (id !== EXECUTE.RICH_API) return void callback(5000);
    const [, , , , text, , flags] = (params as [[never, never, never, never, string, never, number]])[0];
    setTimeout(() => callback({ toArray: () => [0, [200, [], this.#answer(text, flags)]] }), 0);
  };
  #answer(text: string, flags: number): string {
    const refused = (Code: string) => JSON.stringify({ Error: { Code, Message: "", ActionIndex: 0 } });
    if (text.length > MOST_BYTES) return refused("RequestPayloadSizeLimitExceeded");
    const request = JSON.parse(text) as Request;
    const answer = JSON.stringify(
      carryOut(request, { workbook: this.#wire, references: this.#wire.references, service: this.#service }),
    );
    const did = request.Actions.filter(({ ActionType }) => ActionType === ACTION.METHOD || ActionType === ACTION.SET);
    this.seen.push({
      bytes: text.length,
      answer: answer.length,
      flags,
      actions: request.Actions.length,
      did: [...new Set(did.map(({ Name }) => Name))],
    });
    return answer.length > MOST_BYTES ? refused("ResponsePayloadSizeLimitExceeded") : answer;
  }

  RegisterEvent: Native["RegisterEvent"] = (id, _, handler, callback) => {
    this.#handlers.set(id, handler);
    setTimeout(() => callback(0), 0);
  };
  UnregisterEvent: Native["UnregisterEvent"] = (id, _, callback) => {
    this.#handlers.delete(id);
    setTimeout(() => callback(0), 0);
  };

  fire(event: BookEvent, sheet = this.active): void {
    if (event === "selection") setTimeout(() => this.#handlers.get(EVENT.SELECTION)?.(EVENT.SELECTION, {}), 0);
    else {
      const said = { worksheetId: sheet.id, changeType: "RangeEdited", source: "Local", address: "A1" };
      this.#message(65536, MESSAGE[event], "Workbook", said);
    }
  }
  #message(category: number, type: number, target: string, message: unknown): void {
    const line = { toArray: () => [category, type, target, JSON.stringify(message), 0, false] };
    const handler = () => this.#handlers.get(EVENT.RICH_API_MESSAGE);
    setTimeout(() => handler()?.(EVENT.RICH_API_MESSAGE, { toArray: () => [line] }), 0);
  }

  /** Calls a custom function as Excel does: by message, through the runtime inside office.js, and waits for what that sends back. */
  call(id: string, values: readonly unknown[], address = "Sheet1!A1"): Promise<Outcome> {
    const number = this.#calls++;
    return new Promise((resolve) => {
      this.#waiting.set(number, resolve);
      this.#message(1, 1000, "", [number, id, values, address, 4]);
    });
  }
  readonly #service = (type: string): object => {
    const settle = (id: number, ok: boolean, value: unknown, code: number | undefined) => {
      this.#waiting.get(id)?.({ ok, value, code });
      this.#waiting.delete(id);
    };
    const functions = {
      _SetOsfControlContainerReadyForCustomFunctions: () => void (this.functionsReady = true),
      _GetEnabledFeatures: () => [],
      SetInvocationArrayResults: (all: [number, boolean, unknown, number | undefined][]) => {
        for (const one of all) settle(...one);
      },
      SetInvocationResults: (all: { id: number; failed: boolean; value: unknown; errorCode?: number }[]) => {
        for (const { id, failed, value, errorCode } of all) settle(id, !failed, value, errorCode);
      },
    };
    // Whatever else office.js asks of services when it starts, such as where to register events, is heard and not answered.
    const nothing = (_: object, key: string | symbol) => (/^[A-Z_]/.test(String(key)) ? () => null : undefined);
    return type === "Microsoft.ExcelServices.CustomFunctions"
      ? functions
      : new Proxy({}, { has: () => true, get: nothing });
  };
}
