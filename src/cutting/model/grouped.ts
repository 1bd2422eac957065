/**
 * The values of a list by a key that some have in common, both in the order of the list.
 *
 * @example
 * [...grouped([1, 2, 3], (n) => n % 2)] // => [[1, [1, 3]], [0, [2]]]
 */
export function grouped<T, K>(list: readonly T[], keyOf: (value: T) => K): Map<K, T[]> {
  const groups = new Map<K, T[]>();
  for (const value of list) {
    const key = keyOf(value);
    const group = groups.get(key);
    if (group) group.push(value);
    else groups.set(key, [value]);
  }
  return groups;
}
