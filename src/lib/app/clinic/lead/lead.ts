import type { ClinicAction, ScreenView } from '$lib/wire';

/** Something that the instructor can do now. */
export interface Step {
  says: string;
  action: ClinicAction;
  /** The one thing to do now. */
  isMain: boolean;
}

type Led = Pick<
  ScreenView,
  'at' | 'of' | 'phase' | 'isOver' | 'shown' | 'isHelped' | 'advice' | 'hasHint'
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

/** The rod in the water has a “Back” of its own. */
const PREVIOUS = 'Previous';
const CLOSE = { predict: 'Close the vote', ask: 'Close the vote', try: 'Close the round' };

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

function sayable({ at, of, phase, shown, hasHint }: Led): [string, ClinicAction][] {
  const isAsked = shown.kind === 'predict' || shown.kind === 'ask';
  const isHeld = phase === 'held';
  const isDone = shown.kind === 'talk' || phase === 'revealed';
  const closing = shown.kind === 'talk' ? '' : CLOSE[shown.kind];
  const steps: [boolean, string, ClinicAction][] = [
    [at > 0, PREVIOUS, { do: 'go', to: at - 1 }],
    [shown.kind !== 'talk' && phase === 'open', closing, { do: 'hold' }],
    [isAsked && isHeld && hasHint, 'Give the hint', { do: 'hint' }],
    [isAsked && isHeld, 'Talk', { do: 'talk' }],
    [shown.kind !== 'talk' && isHeld, 'Reveal', { do: 'reveal' }],
    [isAsked && phase !== 'open', 'Vote again', { do: 'again' }],
    [shown.kind === 'try' && phase !== 'open', 'Room tries again', { do: 'again' }],
    [at < of - 1, isDone ? 'Next' : 'Skip', { do: 'go', to: at + 1 }],
    [at === of - 1, 'End', { do: 'end' }]
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
