import type { Plugin, PluginCtor } from "@univerjs/core";
import { ICommandService } from "@univerjs/core";
import type { EmbeddedSheet } from "../runningSheet.ts";

/** Puts plug-ins into a running sheet, and waits until they take a command: they start at the next turn. */
export async function startPlugins(
  { univer }: EmbeddedSheet,
  plugins: readonly (readonly [PluginCtor<Plugin>, unknown?])[],
  command: string,
): Promise<void> {
  const commands = univer.__getInjector().get(ICommandService);
  for (const [plugin, options] of plugins) univer.registerPlugin(plugin, options as never);
  for (let turn = 0; !commands.hasCommand(command); turn++) {
    if (turn > 100) throw new Error(`A plug-in did not start (${command}).`);
    await new Promise((resolve) => setTimeout(resolve));
  }
}
