/** Asks one thing at a time; of what is asked meanwhile, only the newest is asked next. */
export class Latest<Question, Answer> {
  #busy = false;
  #next: Question | undefined;
  #generation = 0;
  #stop = new AbortController();

  constructor(
    private readonly ask: (question: Question, signal: AbortSignal) => Promise<Answer>,
    /** May take its time: what it does with an answer is done before the next question is asked. */
    private readonly answered: (answer: Answer, question: Question) => void | Promise<void>,
    private readonly failed: (error: unknown, question: Question) => void,
  ) {}

  request(question: Question): void {
    if (this.#busy) {
      this.#next = question;
      return;
    }
    void this.#run(question);
  }

  /** Drops whatever is under way: its answer is no longer wanted. */
  drop(): void {
    this.#generation += 1;
    this.#next = undefined;
    this.#stop.abort();
    this.#stop = new AbortController();
  }

  async #run(question: Question): Promise<void> {
    const generation = this.#generation;
    this.#busy = true;
    try {
      const answer = await this.ask(question, this.#stop.signal);
      if (generation === this.#generation) await this.answered(answer, question);
    } catch (error) {
      if (generation === this.#generation) this.failed(error, question);
    }
    this.#busy = false;
    const next = this.#next;
    this.#next = undefined;
    if (next !== undefined) void this.#run(next);
  }
}
