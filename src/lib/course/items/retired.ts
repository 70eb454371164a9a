/**
 * Questions that were asked once and are no more, for what another asks as well: who answered one is not
 * told that there never was such a question. What they were about, by name.
 */
const RETIRED: Readonly<Record<string, string>> = {
  'mark-slack-drag': 'slack',
  'mark-two-hops': 'hops',
  'order-slack': 'slack'
};

/** Whether it was a question about one of these objectives. */
export function isRetired(item: string, objectives: readonly string[]): boolean {
  return Object.hasOwn(RETIRED, item) && objectives.includes(RETIRED[item]);
}
