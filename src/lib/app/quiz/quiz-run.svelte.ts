import { judgeAnswer, type Given, type Item, type Judgement } from '$lib/course/items';
import { MODEL_VERSION } from '$lib/model';
import type { Askable, DailySet } from '$lib/practice';
import type { Report } from '$lib/wire';
import type { Learner } from '$lib/learner';

/** Has a question made, until the signal says that nobody waits for it. */
export type MakeItem = (
  named: { item: string; seed: number },
  signal: AbortSignal
) => Promise<Item>;

export type QuizStage = 'making' | 'asking' | 'told' | 'done';

/** A question that was answered, and how. */
export interface Answered {
  item: Item;
  right: boolean;
}

/** A question that is being worked out, with its place in the set. */
interface Made {
  at: number;
  seed: number;
  item: Promise<Item>;
}

/** Going through a set of questions. */
export class QuizRun {
  item = $state.raw<Item | null>(null);
  seed = $state(0);
  verdict = $state.raw<Judgement | null>(null);
  given = $state.raw<Given | null>(null);
  stage = $state<QuizStage>('making');
  at = $state(0);
  /** So far, in the order of the asking. */
  answered = $state.raw<readonly Answered[]>([]);

  #making = new AbortController();
  /** The one after the one that is asked, worked out while that is read and answered. */
  #ahead: Made | null = null;

  /** `nextSeed` gives each question its seed; `make` has the model work one out. */
  constructor(
    private readonly learner: Pick<Learner, 'answered'>,
    readonly set: DailySet,
    private readonly nextSeed: (item: string) => number,
    private readonly make: MakeItem
  ) {
    this.#make();
  }

  get asked(): Askable | undefined {
    return this.set.items[this.at];
  }

  /** Nobody waits for the next question any more. */
  stop(): void {
    this.#making.abort();
  }

  answer(given: Given, report: Report): void {
    if (this.stage !== 'asking' || !this.item) return;
    this.given = given;
    this.verdict = judgeAnswer(this.item.answer, given);
    this.stage = 'told';
    this.answered = [...this.answered, { item: this.item, right: this.verdict.right }];
    this.learner.answered({
      item: this.item.source,
      seed: this.item.seed,
      given: typeof given === 'object' ? [...given] : given,
      right: this.verdict.right,
      report,
      model: MODEL_VERSION
    });
  }

  next(): void {
    this.at++;
    this.#make();
  }

  #make(): void {
    this.verdict = null;
    this.given = null;
    const { asked } = this;
    this.stage = asked ? 'making' : 'done';
    if (!asked) return;
    const made = this.#ahead?.at === this.at ? this.#ahead : this.#begin(this.at, asked);
    this.seed = made.seed;
    void this.#show(made);
  }

  #begin(at: number, { item }: Askable): Made {
    const seed = this.nextSeed(item);
    return { at, seed, item: this.make({ item, seed }, this.#making.signal) };
  }

  async #show({ at, item: making }: Made): Promise<void> {
    try {
      const item = await making;
      if (this.at !== at) return;
      this.item = item;
      this.stage = 'asking';
      this.#workAhead();
    } catch (error) {
      if (!this.#making.signal.aborted) throw error;
    }
  }

  #workAhead(): void {
    const next = this.set.items[this.at + 1];
    if (!next) return;
    this.#ahead = this.#begin(this.at + 1, next);
    // What went wrong is told where it is asked for.
    this.#ahead.item.catch(() => {});
  }
}
