import { spawn } from "node:child_process";

/** Opens a page in the user's own browser. Where that is not possible nothing happens: the address is printed anyway. */
export function openBrowser(url: string): void {
  const [program, ...args] =
    process.platform === "darwin"
      ? ["open", url]
      : process.platform === "win32"
        ? ["cmd", "/c", "start", "", url]
        : ["xdg-open", url];
  const opening = spawn(program!, args, { stdio: "ignore", detached: true });
  opening.on("error", () => undefined);
  opening.unref();
}
