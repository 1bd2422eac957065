/** What work in steps comes to, done at one go. */
export function atOnce<T>(work: Generator<void, T>): T {
  for (;;) {
    const step = work.next();
    if (step.done) return step.value;
  }
}
