/** What the questions are about: a thing to know, and the lesson that teaches it (by its id). */
export interface Objective {
  id: string;
  lesson: string;
  says: string;
}

export const OBJECTIVES: readonly Objective[] = [
  {
    id: 'safety',
    lesson: 'safety',
    says: 'Make the safe call: hooks, wires, thunder, cold water.'
  },
  {
    id: 'bottom-contact',
    lesson: 'from-the-boat',
    says: 'Know when the jig is down, and that it’s still down.'
  },
  { id: 'fall-count', lesson: 'from-the-boat', says: 'Count a fall to depth.' },
  { id: 'clock', lesson: 'the-clock', says: 'Know what each hour of lift does to the jig.' },
  { id: 'one-foot', lesson: 'one-foot', says: 'Turn tip travel into jig travel.' },
  {
    id: 'own-ruler',
    lesson: 'your-hands-ruler',
    says: 'Tell bias from spread, and fix the right one.'
  },
  { id: 'slack', lesson: 'slack', says: 'Count the slack before you move.' },
  { id: 'weight-depth', lesson: 'weight-and-depth', says: 'Pick a weight for depth and wind.' },
  { id: 'speed-limit', lesson: 'speed', says: 'Stay under the speed that lifts the jig.' },
  { id: 'cover', lesson: 'feeling-rocks', says: 'Drag over cover so that you feel it.' },
  { id: 'faults', lesson: 'feeling-rocks', says: 'Find what went wrong in a retrieve.' },
  { id: 'hops', lesson: 'hops', says: 'Make hops that come down again.' },
  { id: 'stroke', lesson: 'stroke-and-fall', says: 'Stroke it, and let it fall right.' },
  {
    id: 'line-rod',
    lesson: 'line-and-rod',
    says: 'Know what line and rod do between your hand and the jig.'
  },
  { id: 'rigging', lesson: 'rigging', says: 'Know what trailer, guard and point change.' },
  { id: 'bottoms', lesson: 'reading-bottoms', says: 'Name a bottom by what comes up the line.' },
  { id: 'bites', lesson: 'bite-or-bottom', says: 'Tell a bite from the bottom, and act.' },
  {
    id: 'hook-set',
    lesson: 'hook-set',
    says: 'Set the hook: when at once, when after reeling, when not.'
  },
  { id: 'first-drop', lesson: 'first-drop', says: 'See a bite on the drop by the line.' },
  { id: 'snags', lesson: 'snags', says: 'Free a snag safely, the gentle ways first.' },
  {
    id: 'boat-position',
    lesson: 'boat-position',
    says: 'Put the boat where your rod can do its work.'
  },
  { id: 'offshore', lesson: 'offshore', says: 'Fish a jig in deep water.' },
  {
    id: 'season-map',
    lesson: 'season-map',
    says: 'Start where the season puts fish, and know when to move.'
  },
  {
    id: 'season',
    lesson: 'season-and-mood',
    says: 'Pick a retrieve and pace for temperature and mood.'
  },
  {
    id: 'morning',
    lesson: 'a-morning',
    says: 'Put it together: look, change one thing, write it down.'
  }
];
