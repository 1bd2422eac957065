/**
 * A map that keeps so many entries and no more: the oldest goes first.
 *
 * @example
 * [...new LimitedMap(2).set("a", 1).set("b", 2).set("c", 3).keys()] // => ["b", "c"]
 */
export class LimitedMap<K, V> extends Map<K, V> {
  readonly #most: number;
  constructor(most: number) {
    super();
    this.#most = most;
  }
  override set(key: K, value: V): this {
    if (this.size >= this.#most && !this.has(key)) this.delete(this.keys().next().value!);
    return super.set(key, value);
  }
}
