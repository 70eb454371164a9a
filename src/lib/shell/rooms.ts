/** The rooms that the bar leads to, each with the addresses that belong to it. */
export const ROOMS = [
  { name: 'Lessons', address: '/lessons', holds: ['/lessons'] },
  {
    name: 'Practice',
    address: '/practice',
    holds: [
      '/practice',
      '/water',
      '/ruler/practise',
      '/retrieves',
      '/compare',
      '/homework',
      '/gear',
      '/film',
      '/tests',
      '/explore',
      '/card',
      '/plan',
      '/log'
    ]
  },
  { name: 'Questions', address: '/quiz', holds: ['/quiz', '/standing', '/print-quiz'] },
  { name: 'Your ruler', address: '/ruler', holds: ['/ruler'] }
] as const;

export type RoomAddress = (typeof ROOMS)[number]['address'];

/** The room that a path belongs to, or null: the longest address that it begins with. */
export function roomAddressOf(path: string): RoomAddress | null {
  const held = ROOMS.flatMap(({ address, holds }) => holds.map((at) => ({ address, at })));
  const mine = held
    .filter(({ at }) => path === at || path.startsWith(`${at}/`))
    .sort((a, b) => b.at.length - a.at.length);
  return mine[0]?.address ?? null;
}
