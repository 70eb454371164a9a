import type { Basis } from '../../basis';
import { LOOK_ALIKES, type BottomSign, type Family } from '../look-alikes';
import { on, type QuestionClaim, type QuestionClaims } from './claim';
import { BOULDERS, BRUSH, GRASS, GRAVEL, MUD, ROCK, SAND, SHELLS } from './rests-on';

/** What shows that a bottom is always like that. */
const SHOWN_BY: Readonly<Partial<Record<BottomSign['kind'], Basis>>> = {
  gravel: GRAVEL,
  'chunk rock': ROCK,
  boulders: BOULDERS,
  brush: BRUSH,
  grass: GRASS,
  'shell bed': SHELLS,
  mud: MUD,
  sand: SAND
};

/** The sentence about a bottom that is another, that about the one dragged over, and why it does that. */
function bottomsOf(family: Family, shows: 'felt' | 'pull'): QuestionClaim[] {
  return LOOK_ALIKES[family].flatMap(({ kind, [shows]: [always, now], why }: BottomSign) => [
    on(SHOWN_BY[kind] ?? 'practice', always),
    on('answer', `It ${now}`, `this one ${now}`, why)
  ]);
}

export const onFelt: QuestionClaims = {
  'pull-over-rock': bottomsOf('hard', 'pull'),
  'pull-over-stems': bottomsOf('catchy', 'pull'),
  'pull-over-smooth': bottomsOf('even', 'pull'),
  'felt-rock': bottomsOf('hard', 'felt'),
  'felt-stems': bottomsOf('catchy', 'felt'),
  'felt-smooth': bottomsOf('even', 'felt'),
  'bite-while-still': [
    on(
      'answer',
      'The knocks came while you dragged.',
      'With the rod still, nothing happened.',
      'Nothing changed on this line after your drag.',
      'That’s a jig at rest.',
      'You dragged over rock: it knocked.',
      'Look at what came after your drag: the line changed while the rod was still.',
      'Rock only knocks while you drag, and this came after.',
      'This drag was even.',
      'It knocked while you dragged and went quiet when you stopped.',
      'Just the line’s own weight, and no change.',
      'Two quick knocks while the rod is still: bottom doesn’t move on its own.',
      'A soft weight that grows while the rod is still: something is holding the jig.',
      'The weight goes away while the rod is still: something picked the jig up.',
      'The pull grows while the rod is still: something is swimming off.',
      'Bottom talks while you drag and holds still when you do.',
      'With the rod still, any change is news.'
    ),
    on(ROCK, 'Rock knocks while you drag.')
  ]
};
