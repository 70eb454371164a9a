import type { MotionRow, ScaleFault } from '$lib/film';
import { formatLength, formatTime, type Units } from '$lib/scoring';
import type { FollowEnd } from './follow-spots';
import type { FilmedSpot } from './spot-track';

export const SPOT_NAMES: Readonly<Record<FilmedSpot, string>> = {
  bait: 'jig',
  bottom: 'bottom spot',
  tip: 'rod tip'
};

export const CORNERS = ['bottom left', 'bottom right', 'top right', 'top left'] as const;
export const ENDS = ['one end', 'the other end'] as const;

const SCALE_FAULTS: Readonly<Record<ScaleFault, string>> = {
  missing_marks: 'Marks are missing.',
  no_length: 'Type the length between the marks.',
  too_close: 'Those marks are too close. Use something longer, or film closer.',
  not_a_frame: 'Mark the corners in order: bottom left, bottom right, top right, top left.'
};
export const scaleFaultText = (fault: ScaleFault): string => SCALE_FAULTS[fault];

export function endText(end: FollowEnd, t_s: number): string {
  switch (end.kind) {
    case 'end':
      return 'Followed to the end of the clip.';
    case 'stopped':
      return `Stopped at ${formatTime(t_s)}.`;
    case 'undecodable':
      return `The clip can’t be read past ${formatTime(t_s)}. Everything before that is kept.`;
    case 'lost':
      return `Lost the ${SPOT_NAMES[end.spot]} here. Mark it, or step to where it shows, then follow again.`;
    case 'plain':
      return `Nothing to lock on to there. Mark the ${SPOT_NAMES[end.spot]} where light meets dark, off the edge of the picture.`;
  }
}

/** 1.645 deviations: the true value is within it nine times in ten. */
export const NINE_IN_TEN = 1.645;

/** 11 in ± ½ in */
export function giveOrTake(m: number, sd_m: number, units: Units): string {
  return `${formatLength(m, units)} ± ${formatLength(NINE_IN_TEN * sd_m, units)}`;
}

const FLAGS: Readonly<Record<MotionRow['flag'], string>> = {
  sure: '',
  by_hand: 'by hand',
  unsure: 'unsure',
  lost: 'lost',
  gap: 'frames missing before'
};
export const flagText = (flag: MotionRow['flag']): string => FLAGS[flag];

/** What is not right in a stretch, counted; empty where all is. */
export function doubtText({ lost, unsure, gaps }: { lost: number; unsure: number; gaps: number }) {
  const frames = (n: number) => `${n} ${n === 1 ? 'frame' : 'frames'}`;
  return [
    lost > 0 ? `Lost in ${frames(lost)}.` : '',
    unsure > 0 ? `Unsure in ${frames(unsure)}: step there and mark by hand.` : '',
    gaps > 0 ? `The camera skipped in ${gaps === 1 ? '1 place' : `${gaps} places`}.` : '',
    lost + gaps > 0 ? 'No height: the peak may be in the missing frames.' : ''
  ]
    .filter(Boolean)
    .join(' ');
}
