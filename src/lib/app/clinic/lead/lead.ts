import type { ClinicAction, RoomTry, ScreenView } from '$lib/wire';

/** Something that the instructor can do now. */
export interface Step {
  says: string;
  action: ClinicAction;
  /** The one thing to do now. */
  isMain: boolean;
}

type Led = Pick<
  ScreenView,
  'at' | 'of' | 'phase' | 'isOver' | 'shown' | 'isHelped' | 'advice' | 'hasHint' | 'replay'
>;

/** Before anything is asked the way in is what the screen is for, until the door is closed. */
export function isJoining({
  at,
  shown,
  isDoorClosed,
  isOver
}: Pick<ScreenView, 'at' | 'shown' | 'isDoorClosed' | 'isOver'>): boolean {
  return at === 0 && shown.kind === 'talk' && !isDoorClosed && !isOver;
}

/** A plot under more lines than these, or of more rounds, would stand under the bar. */
const MOST_LINES = 3;
const MOST_ROUNDS = 2;

/** The rounds whose hand the room sees now: the last ones in a pause, and the same task after a try. */
export function roundsBeside({
  shown,
  rounds,
  tries,
  replay
}: Pick<ScreenView, 'shown' | 'rounds' | 'tries' | 'replay'>): ScreenView['rounds'] {
  if (shown.kind === 'talk')
    return shown.says.length <= MOST_LINES ? rounds.slice(-MOST_ROUNDS) : [];
  if (shown.kind !== 'try' || tries === null || replay !== null) return [];
  const alike = rounds.filter(({ title }) => title === shown.challenge.title);
  return alike.length > 1 ? alike.slice(-MOST_ROUNDS) : [];
}

/** Tries worth a look, by what they reached of the task: the least, the middle and the most. */
export function triesToShow(tries: readonly RoomTry[] | null): { says: string; id: string }[] {
  const reached = (tries ?? []).flatMap(({ id, figure }) =>
    figure === null ? [] : [{ id, figure }]
  );
  const sorted = reached.sort((a, b) => a.figure - b.figure);
  const middle = sorted[Math.floor((sorted.length - 1) / 2)];
  const all = [
    { says: 'The least', of: sorted[0] },
    { says: 'The middle one', of: middle },
    { says: 'The most', of: sorted.at(-1) }
  ];
  return all.flatMap(({ says, of }, i) => {
    const isFirst = all.findIndex((one) => one.of === of) === i;
    return of && isFirst ? [{ says, id: of.id }] : [];
  });
}

/** The rod in the water has a “Back” of its own. */
const PREVIOUS = 'Previous round';
const CLOSE = { predict: 'Stop voting', ask: 'Stop voting', try: 'Close the round' };

/** What can be done with the room, the advised one marked; the others are the instructor's to choose. */
export function stepsOf(view: Led): Step[] {
  if (view.isOver) return [{ says: 'Open it again', action: { do: 'resume' }, isMain: false }];
  const main = mainOf(view);
  return sayable(view).map(([says, action]) => ({
    says,
    action,
    isMain: action.do === main && says !== PREVIOUS
  }));
}

type Press = Pick<KeyboardEvent, 'key' | 'repeat' | 'ctrlKey' | 'altKey' | 'metaKey' | 'shiftKey'>;

/** What a presenter's clicker sends: forward is the advised step, back the round before. */
const FORWARD = ['PageDown', 'ArrowRight'];
const BACK = ['PageUp', 'ArrowLeft'];

/** The step of a key that nothing on the page has a use for; a clicker never ends a clinic. */
export function stepOfKey(press: Press, steps: readonly Step[]): Step | null {
  if (press.repeat || press.ctrlKey || press.altKey || press.metaKey || press.shiftKey) return null;
  if (BACK.includes(press.key)) return steps.find(({ says }) => says === PREVIOUS) ?? null;
  if (!FORWARD.includes(press.key)) return null;
  return steps.find(({ isMain, action }) => isMain && action.do !== 'end') ?? null;
}

/** Whether keys on this element are its own: what is typed, and what slides. */
export function takesKeys(target: EventTarget | null): boolean {
  return (
    target instanceof Element &&
    target.closest('input, select, textarea, [role="slider"], [contenteditable]') !== null
  );
}

function sayable({ at, of, phase, shown, hasHint, replay }: Led): [string, ClinicAction][] {
  const isAsked = shown.kind === 'predict' || shown.kind === 'ask';
  const isHeld = phase === 'held';
  const isDone = shown.kind === 'talk' || phase === 'revealed';
  const closing = shown.kind === 'talk' ? '' : CLOSE[shown.kind];
  const steps: [boolean, string, ClinicAction][] = [
    [at > 0, PREVIOUS, { do: 'go', to: at - 1 }],
    [shown.kind !== 'talk' && phase === 'open', closing, { do: 'hold' }],
    [isAsked && isHeld && hasHint, 'Give the hint', { do: 'hint' }],
    [isAsked && isHeld, 'Two minutes to talk', { do: 'talk' }],
    [isAsked && isHeld, 'Reveal the answer', { do: 'reveal' }],
    [shown.kind === 'try' && isHeld, 'Reveal the tries', { do: 'reveal' }],
    [isAsked && phase !== 'open', 'Vote again', { do: 'again' }],
    [shown.kind === 'try' && phase !== 'open', 'Room tries again', { do: 'again' }],
    [replay !== null, 'Show all tries', { do: 'show', id: null }],
    [at < of - 1, isDone ? 'Next round' : 'Skip this round', { do: 'go', to: at + 1 }],
    [at === of - 1, 'End the clinic', { do: 'end' }]
  ];
  return steps.flatMap(([isSayable, says, action]) => (isSayable ? [[says, action]] : []));
}

function mainOf({ at, of, phase, shown, isHelped, advice }: Led): ClinicAction['do'] | null {
  const onwards = at < of - 1 ? 'go' : 'end';
  if (shown.kind === 'talk' || phase === 'revealed') return onwards;
  if (phase === 'open') return 'hold';
  if (shown.kind === 'try') return 'reveal';
  if (isHelped) return 'again';
  if (advice === 'teach') return 'hint';
  return advice === 'discuss' ? 'talk' : 'reveal';
}
