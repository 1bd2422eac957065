/** Asks for something that takes long, and forgets what was asked when nobody waits for it any more. */
export interface NewestOnly<Asked> {
  ask(asked: Asked): void;
  stop(): void;
}

/**
 * Does a task for the newest thing that is asked: once it has been calm for some milliseconds, and one at a time, so that
 * fast typing never has two running. What was asked while one runs is overtaken by what is asked after it.
 *
 * `done` is told what its answer is for. A task that fails (a cell is being edited, say) is left until the next time.
 */
export function newestOnly<Asked, Found>(
  calm: number,
  task: (asked: Asked) => Promise<Found>,
  done: (asked: Asked, found: Found) => void = () => undefined,
): NewestOnly<Asked> {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let next: { readonly asked: Asked } | null = null;
  let running = false;
  let over = false;
  const run = async () => {
    if (running) return;
    running = true;
    while (next && !over) {
      const { asked }: { readonly asked: Asked } = next;
      next = null;
      const found = await task(asked).then(
        (value) => ({ value }),
        () => null,
      );
      if (found && !next && !over) done(asked, found.value);
    }
    running = false;
  };
  return {
    ask(asked) {
      clearTimeout(timer);
      timer = setTimeout(() => {
        next = { asked };
        void run();
      }, calm);
    },
    stop() {
      over = true;
      clearTimeout(timer);
    },
  };
}
