import type { Lesson } from '$lib/course';
import { now, type Learner } from '$lib/learner';
import type { Station } from '$lib/practice';
import type { Prediction } from '$lib/wire';
import { tick } from 'svelte';
import { goTo } from './place';

/** What is done in a lesson goes into the learner’s record. */
export class LessonSteps {
  /** The step in which a call was just made here, until its answer is there. */
  private called = '';

  constructor(
    private readonly learner: Learner,
    private readonly lesson: Lesson
  ) {}

  /** Null where nothing was predicted yet. */
  predictedAt({ id }: Station): Prediction | null {
    const { predictions } = this.learner.record;
    return predictions.find((one) => one.lesson === this.lesson.id && one.station === id) ?? null;
  }

  predicted({ id }: Station, made: Pick<Prediction, 'option' | 'said'>): void {
    const prediction = { lesson: this.lesson.id, station: id, ...made, at: now() };
    this.called = id;
    this.learner.change({ kind: 'predicted', prediction });
  }

  /** Whether the answer that is there is to a call just made, and not to one of an earlier visit; once. */
  takeCalled({ id }: Station): boolean {
    const isIt = this.called === id;
    this.called = '';
    return isIt;
  }

  async goOn(station: Pick<Station, 'id'>): Promise<void> {
    this.reach(station);
    await tick();
    goTo(station.id);
  }

  reach({ id }: Pick<Station, 'id'>): void {
    this.learner.change({ kind: 'reached', lesson: this.lesson.id, station: id, at: now() });
  }

  /** A try is left out on purpose. */
  skip({ id }: Pick<Station, 'id'>): void {
    this.learner.change({ kind: 'skipped', lesson: this.lesson.id, station: id, at: now() });
  }

  /** The first time counts. */
  finish({ id }: Station): void {
    const mine = this.learner.record.progress.find(({ lesson }) => lesson === this.lesson.id);
    if (mine && mine.finished !== null) return;
    this.learner.change({ kind: 'finished', lesson: this.lesson.id, station: id, at: now() });
  }
}
