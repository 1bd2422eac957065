/** As CustomFunctions.Error: a code and, for two codes only, a message. */
export class FakeError {
  readonly code: string;
  readonly message: string | undefined;
  constructor(code: string, message?: string) {
    if (message !== undefined && code !== "#VALUE!" && code !== "#N/A")
      throw new Error(`Excel takes no message with ${code}`);
    if (!/^#(VALUE!|N\/A|DIV\/0!|NUM!|NULL!)$/.test(code)) throw new Error(`Excel takes no ${code} from a function`);
    this.code = code;
    this.message = message;
  }
}
