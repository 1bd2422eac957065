/** Anything that Excel lets one listen to. */
interface Listening {
  remove(): void;
  readonly context: OfficeExtension.ClientRequestContext;
}

/** Listens to events of the workbook until the function that comes back is called. Nothing is heard after that, even what is on its way. */
export function listen(
  start: (context: Excel.RequestContext, heard: (report: () => void) => Promise<void>) => Listening[],
): () => void {
  let stopped = false;
  const heard = async (report: () => void) => {
    if (!stopped) report();
  };
  const started = Excel.run(async (context) => {
    const listening = start(context, heard);
    await context.sync();
    return listening;
  });
  // Without its events a pane only follows the sheet later, when something is read anew.
  started.catch(() => undefined);
  return () => {
    if (stopped) return;
    stopped = true;
    void started.then((listening) => removeAll(listening)).catch(() => undefined);
  };
}

async function removeAll(listening: Listening[]): Promise<void> {
  for (const one of listening) one.remove();
  await listening[0]?.context.sync();
}
