import {
  itemOf,
  judge,
  lessonOf,
  SOURCES,
  type Given,
  type Item,
  type Verdict
} from '$lib/course/items';
import { MODEL_VERSION } from '$lib/model';
import { dailySet, type Askable, type DailySet, type Report } from '$lib/practice';
import type { Learner } from '../record/learner.svelte';

/** Seeds are drawn from so many: two learners hardly ever get the same question. */
const SEEDS = 1_000_000;

export type Stage = 'making' | 'asking' | 'told' | 'done';

/** Going through the questions of a day. */
export class QuizRun {
  item = $state.raw<Item | null>(null);
  seed = $state(0);
  verdict = $state.raw<Verdict | null>(null);
  given = $state.raw<Given | null>(null);
  stage = $state<Stage>('making');
  at = $state(0);
  readonly set: DailySet;

  /** `random` draws seeds, 0 to below 1; `later` runs work once the page has been painted. */
  constructor(
    private readonly learner: Pick<Learner, 'record' | 'answered'>,
    now: string,
    private readonly random: () => number,
    private readonly later: (work: () => void) => void
  ) {
    const { answers, progress } = learner.record;
    const isMet = (objective: string) =>
      progress.some(({ lesson }) => lesson === lessonOf(objective));
    this.set = dailySet(SOURCES, answers, now, isMet);
    this.#make();
  }

  get asked(): Askable | undefined {
    return this.set.items[this.at];
  }

  answer(given: Given, report: Report): void {
    if (this.stage !== 'asking' || !this.item) return;
    this.given = given;
    this.verdict = judge(this.item.answer, given);
    this.stage = 'told';
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
    this.seed = 1 + Math.floor(this.random() * SEEDS);
    this.later(() => {
      this.item = itemOf(asked.item, this.seed);
      this.stage = 'asking';
    });
  }
}
