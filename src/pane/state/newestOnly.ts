/** Asks for something that takes long, and forgets what was asked when nobody waits for it any more. */
export interface NewestOnly<Asked> {
  ask(asked: Asked): void;
  stop(): void;
}

/**
 * Does a task that takes long for the newest thing that is asked: not before it has been calm for some milliseconds, and one at a time, so that fast
 * typing never has two of them running; it answers its own failures. What was asked while one runs is overtaken by what is asked after it. `done` is told what its answer is for.
 */
export function newestOnly<Asked, Found>(
  calm: number,
  task: (asked: Asked) => Promise<Found>,
  done: (asked: Asked, found: Found) => void,
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
      const found = await task(asked);
      if (!next && !over) done(asked, found);
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
