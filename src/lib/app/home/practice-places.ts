/** Where one can practise besides lessons and drills. */
export const PLACES = [
  { path: '/retrieves', title: 'Retrieves', says: 'Watch one, then do it.' },
  { path: '/compare', title: 'Two runs side by side', says: 'One move, two weights or two paces.' },
  {
    path: '/explore',
    title: 'What if',
    says: 'Charts: how far and how high, as one thing changes.'
  },
  { path: '/gear', title: 'My gear', says: 'Your own rod, line and jig.' },
  {
    path: '/plan',
    title: 'Plan a day',
    says: 'Which jig holds, what to throw first, what to change.'
  },
  { path: '/card', title: 'Boat card', says: 'Your rod and jig on one page.' },
  {
    path: '/log',
    title: 'Field log',
    says: 'Six taps after ten casts. What worked, and how little it proves.'
  },
  {
    path: '/film',
    title: 'Film your jig',
    says: 'From a clip to how far it came, each with its ±.'
  },
  { path: '/tests', title: 'Test your gear', says: 'Measure it, and fit the model to it.' }
] as const;
