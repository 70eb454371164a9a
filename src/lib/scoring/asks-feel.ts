import type { Challenge } from './challenge';

/** Whether a task is done by what comes up the line: a bite, a bottom, rocks out of sight. */
export function asksFeel({ goals, setup, visibility }: Challenge): boolean {
  const isOutOfSight = visibility !== 'seen';
  return (
    setup.bottom?.ground !== undefined ||
    goals.some(({ kind }) => kind === 'strike' || (kind === 'stones' && isOutOfSight))
  );
}
