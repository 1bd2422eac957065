/** Lets go of what was held. */
export type Release = () => void;

/**
 * Holds a job for this tab, until it lets go or is closed. Null where another tab has it.
 *
 * A browser without locks lets every tab have it.
 */
export function jobLock(locks: LockManager | undefined, id: string): Promise<Release | null> {
  if (!locks) return Promise.resolve(() => undefined);
  return new Promise((resolve, reject) => {
    locks
      .request(`longpoint job ${id}`, { ifAvailable: true }, (lock) => {
        if (!lock) return resolve(null);
        return new Promise<void>((release) => resolve(release));
      })
      .catch(reject);
  });
}
