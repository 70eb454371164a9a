import { drills } from '$lib/course';

/** A page to practice on; a drill is told by its id. */
type Place = { title: string; says: string } & ({ drill: string } | { path: PlacePath });

type PlacePath =
  | '/water'
  | '/try'
  | '/retrieves'
  | '/compare'
  | '/explore'
  | '/gear'
  | '/plan'
  | '/card'
  | '/log'
  | '/film'
  | '/tests';

interface PlaceGroup {
  name: string;
  /** What all of its places have in common. */
  says?: string;
  places: readonly Place[];
}

/** What each drill trains, by its id. */
const SAID: Readonly<Record<string, string>> = {
  drag: 'Three distances, slow and quick, at two depths.',
  hop: 'Low, middle and high hops, followed down.',
  count: 'Know by the count when it’s on bottom.'
};

/** Where one can practice besides lessons. */
export const PLACE_GROUPS: readonly PlaceGroup[] = [
  {
    name: 'Train your hand',
    says: 'In sight first, then hidden, then a check.',
    places: [...drills.map(({ id, title }) => ({ drill: id, title, says: SAID[id] }))]
  },
  {
    name: 'Try and compare',
    places: [
      { path: '/water', title: 'Practice water', says: 'Any weight, any depth, no marks.' },
      { path: '/try', title: 'Drag it one foot', says: 'The first try, once more.' },
      { path: '/retrieves', title: 'Retrieves', says: 'Watch one, then do it.' },
      {
        path: '/compare',
        title: 'Two runs side by side',
        says: 'One move, two weights or two paces.'
      },
      {
        path: '/explore',
        title: 'What if',
        says: 'Charts: how far and how high, as one thing changes.'
      }
    ]
  },
  {
    name: 'Your own gear',
    places: [
      { path: '/gear', title: 'My gear', says: 'Your own rod, line and jig.' },
      {
        path: '/film',
        title: 'Film your jig',
        says: 'From a clip to how far it came, with its give or take.'
      },
      { path: '/tests', title: 'Test your gear', says: 'Measure it, and fit the model to it.' }
    ]
  },
  {
    name: 'A day on the water',
    places: [
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
      }
    ]
  }
];
