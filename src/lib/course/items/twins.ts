/**
 * Questions that ask for the same thing: in other words, by a picture instead of by feel, or with other
 * figures. Whoever has answered one has answered the other, so a set has one of each row.
 */
const TWINS: readonly (readonly string[])[] = [
  ['felt-rock', 'pull-over-rock'],
  ['felt-stems', 'pull-over-stems'],
  ['felt-smooth', 'pull-over-smooth'],
  ['bottom-boulder', 'cover-slow'],
  ['bottom-slow', 'speed-rock', 'speed-what-lifts'],
  ['contact-pendulum', 'stroke-pendulum'],
  ['deep-count', 'count-to-depth'],
  ['fall-count', 'mark-fall'],
  ['hour-of-most-travel', 'clock-third'],
  ['mark-drag', 'bait-way-of-slow-drag', 'tip-way-for-one-foot'],
  ['morning-choice', 'season-retrieve'],
  ['near-or-far', 'weight-near'],
  ['rig-trailer', 'trailer-fall'],
  ['rod-tip', 'rod-soft-hop']
];

/** The name that twins share; a question without one has its own. */
export function askedThing(item: string): string {
  return TWINS.find((row) => row.includes(item))?.[0] ?? item;
}
