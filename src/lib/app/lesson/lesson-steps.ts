import type { Lesson } from '$lib/course';
import { now, type Learner } from '$lib/app/record';
import type { Station } from '$lib/practice';
import { tick } from 'svelte';
import { goTo } from './place';

/** What is done in a lesson goes into the learner’s record. */
export class LessonSteps {
  constructor(
    private readonly learner: Learner,
    private readonly lesson: Lesson
  ) {}

  /** Null where nothing was predicted yet. */
  chosenAt({ id }: Station): string | null {
    const { predictions } = this.learner.record;
    const made = predictions.find((one) => one.lesson === this.lesson.id && one.station === id);
    return made?.option ?? null;
  }

  predicted({ id }: Station, option: string): void {
    const prediction = { lesson: this.lesson.id, station: id, option, at: now() };
    this.learner.change({ kind: 'predicted', prediction });
  }

  async goOn({ id }: Station): Promise<void> {
    this.learner.change({ kind: 'reached', lesson: this.lesson.id, station: id, at: now() });
    await tick();
    goTo(id);
  }

  finish({ id }: Station): void {
    this.learner.change({ kind: 'finished', lesson: this.lesson.id, station: id, at: now() });
  }
}
