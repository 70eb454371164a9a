/**
 * Which questions ask about which objective of which lesson, by the objective's own words. Objectives
 * of the hand are asked about, too: what to do, and what one sees when it went wrong.
 */
export const COVERAGE: Readonly<Record<string, Readonly<Record<string, readonly string[]>>>> = {
  safety: {
    'Know what to check before the first cast.': [
      'safety-eyes',
      'safety-power-line',
      'safety-life-jacket',
      'safety-plan'
    ],
    'Know what to do about a hook, thunder, and cold water.': [
      'safety-hook-in-eye',
      'safety-thunder',
      'safety-cold-water'
    ]
  },
  'one-foot': {
    'Drag a jig {1 ft|30 cm}, give or take {2 in|5 cm}, without lifting it.': [
      'mark-drag',
      'pace-limit'
    ],
    'Know how far a sweep brings it.': ['mark-drag', 'foot-hand', 'bait-way-of-slow-drag'],
    'Drag over rocks and feel them.': ['cover-slow', 'pull-over-rock', 'felt-rock']
  },
  'your-hands-ruler': {
    'Call how far the jig went before you see it.': ['ruler-first', 'mark-drag'],
    'Know if your hand runs long, short or uneven.': ['ruler-bias', 'ruler-spread']
  },
  slack: {
    'Know what slack takes from a drag.': [
      'tip-way-for-one-foot',
      'bait-way-of-slow-drag',
      'slack-hop'
    ],
    'Reel up slack, or shake it, without moving the jig.': ['slack-feel']
  },
  'from-the-boat': {
    'Tell by the line when the jig is down.': ['contact-first', 'contact-lost', 'fall-count'],
    'Know what a tight line does to a fall.': ['contact-pendulum']
  },
  'weight-and-depth': {
    'Pick a weight for a depth and say why.': ['weight-and-pace', 'weight-heavier', 'weight-wind'],
    'Expect a longer count for a lighter jig or deeper water.': [
      'order-weights-fall',
      'count-to-depth',
      'mark-fall'
    ]
  },
  speed: {
    'Know what lifts a jig off flat bottom.': ['speed-what-lifts', 'pace-limit'],
    'Slow down as the jig gets close.': ['weight-near']
  },
  'boat-position': {
    'Move a jig as far as you mean from a drifting boat.': ['boat-onto', 'boat-cast'],
    'Know what a drifting boat adds to your drag, or takes from it.': ['boat-away', 'boat-onto']
  },
  'feeling-rocks': {
    'Touch every rock in the path.': ['cover-slow', 'fault-of-drag', 'pull-over-rock'],
    'Know a fast hand from an empty spot.': ['speed-rock', 'pace-limit']
  },
  'the-clock': {
    'Know what an early and a late hour of lift do to the jig.': [
      'hour-of-most-travel',
      'order-moves-travel',
      'clock-third'
    ],
    'Lift a jig and follow it down.': ['clock-lower', 'hops-follow', 'near-or-far']
  },
  hops: {
    'Hop the jig to a height you called.': ['order-paces', 'order-weights-hop', 'sweep-or-lift'],
    'Make three hops with even rests, and with uneven ones.': [
      'hops-rhythm',
      'fault-of-hops',
      'hops-and-reel'
    ]
  },
  'stroke-and-fall': {
    'Snap it up, then follow it down on semi-slack line.': [
      'sweep-or-lift',
      'stroke-when',
      'stroke-pendulum'
    ],
    'Know what a pendulum fall costs.': ['stroke-pendulum', 'contact-pendulum']
  },
  'line-and-rod': {
    'Know when stretch and rod bend matter.': ['order-lines-hop', 'line-stretch', 'rod-tip'],
    'Adjust a hop for a soft rod.': ['rod-soft-hop']
  },
  rigging: {
    'Know what a trailer and a line change.': [
      'rig-trailer',
      'trailer-fall',
      'rig-weedguard',
      'rig-point'
    ],
    'Slow down for a big trailer.': ['rig-trailer']
  },
  'reading-bottoms': {
    'Name a bottom by feel.': [
      'felt-rock',
      'felt-stems',
      'felt-smooth',
      'pull-over-rock',
      'pull-over-stems',
      'pull-over-smooth',
      'bottom-grass'
    ],
    'Drag slowly enough to tell.': ['bottom-slow']
  },
  'bite-or-bottom': {
    'Tell what moves from what holds.': ['bite-while-still', 'snag-or-fish', 'bite-weight-gone'],
    'Set on a bite in time, and only on a bite.': ['bite-while-still', 'bite-mush', 'bite-set-cost']
  },
  'hook-set': {
    'Reel down, then sweep, in time.': ['set-slack', 'set-sweep'],
    'Know when to set, when to reel first, and when not to.': ['set-tight', 'set-not']
  },
  'first-drop': {
    'Know a bite on the drop by the line.': ['drop-watch', 'drop-runs'],
    'Set on a bite on semi-slack line.': ['bite-early-stop']
  },
  snags: {
    'Free a jig with slack and small shakes.': ['snag-first', 'snag-bow', 'snag-braid'],
    'Know what you never do with a stuck jig.': ['snag-break', 'snag-angle']
  },
  offshore: {
    'Drag and hop in {35 ft|10.5 m} and know it’s down.': ['deep-count', 'count-to-depth'],
    'Know what deep water changes.': ['deep-count', 'deep-weight']
  },
  'season-map': {
    'Know where to start, and with what.': ['season-spot', 'season-retrieve', 'season-thermocline'],
    'Know when to move first and when to stay.': ['move-or-stay']
  },
  'season-and-mood': {
    'Pick a retrieve for what fish show, and say why.': [
      'season-retrieve',
      'mood',
      'season-change'
    ],
    'Do nothing for as long as it takes.': ['season-pause']
  },
  'a-morning': {
    'Pick a retrieve and say why.': ['morning-choice', 'morning-order'],
    'Do three things well, one after another.': ['morning-three']
  }
};

/** The lessons' objectives, in their own words, that a question of this name asks about. */
export function askedBy(item: string): string[] {
  return Object.values(COVERAGE)
    .flatMap((objectives) => Object.entries(objectives))
    .filter(([, items]) => items.includes(item))
    .map(([words]) => words);
}
