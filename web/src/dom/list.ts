/** A list whose items are made anew only when what they show has changed. */

export class List<Item> {
  #shown: { readonly stamp: string; readonly node: HTMLElement }[] = [];

  constructor(
    private readonly node: HTMLElement,
    private readonly make: (item: Item) => HTMLElement,
  ) {}

  show(items: readonly Item[]): void {
    const before = Map.groupBy(this.#shown, ({ stamp }) => stamp);
    const next = items.map((item) => {
      const stamp = JSON.stringify(item);
      return before.get(stamp)?.shift() ?? { stamp, node: this.make(item) };
    });
    for (const gone of [...before.values()].flat()) gone.node.remove();
    for (const [index, { node }] of next.entries()) {
      const here = this.node.children[index] ?? null;
      if (here !== node) this.node.insertBefore(node, here);
    }
    this.#shown = next;
  }
}
