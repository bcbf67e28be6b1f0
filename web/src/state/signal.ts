/** A value that tells when it changes. */
export class Signal<T> {
  #value: T;
  readonly #listeners = new Set<(value: T) => void>();

  constructor(value: T) {
    this.#value = value;
  }

  get value(): T {
    return this.#value;
  }

  set(value: T): void {
    this.#value = value;
    for (const listener of [...this.#listeners]) listener(value);
  }

  /** Listens from now on; call what is returned to stop. */
  listen(listener: (value: T) => void): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }

  /** Listens, beginning with the value as it is. */
  follow(listener: (value: T) => void): () => void {
    listener(this.#value);
    return this.listen(listener);
  }
}
