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
    says: 'Decide safely: hooks, power lines, thunder, cold water.'
  },
  {
    id: 'bottom-contact',
    lesson: 'from-the-boat',
    says: 'Know when the bait is down, and that it is still down.'
  },
  { id: 'fall-count', lesson: 'from-the-boat', says: 'Count a fall to depth.' },
  { id: 'clock', lesson: 'the-clock', says: 'Say what each hour of lift does to the bait.' },
  { id: 'one-foot', lesson: 'one-foot', says: 'Turn tip travel into bait travel.' },
  {
    id: 'own-ruler',
    lesson: 'your-hands-ruler',
    says: 'Tell bias from spread, and correct the right one.'
  },
  { id: 'slack', lesson: 'slack', says: 'Reckon with slack before the move.' },
  { id: 'weight-depth', lesson: 'weight-and-depth', says: 'Choose a weight for depth and wind.' },
  { id: 'speed-limit', lesson: 'speed', says: 'Keep below the speed at which the bait lifts.' },
  { id: 'cover', lesson: 'feeling-rocks', says: 'Drag over cover so that it is felt.' },
  { id: 'faults', lesson: 'feeling-rocks', says: 'Find the fault in a retrieve.' },
  { id: 'hops', lesson: 'hops', says: 'Make hops that come down again.' },
  { id: 'stroke', lesson: 'stroke-and-fall', says: 'Stroke, and let it fall as it should.' },
  {
    id: 'line-rod',
    lesson: 'line-and-rod',
    says: 'Know what line and rod do between hand and bait.'
  },
  { id: 'bottoms', lesson: 'reading-bottoms', says: 'Name a bottom by what comes up the line.' },
  { id: 'bites', lesson: 'bite-or-bottom', says: 'Tell a bite from the bottom, and act.' },
  { id: 'snags', lesson: 'snags', says: 'Free a snag without danger, the gentle ways first.' },
  {
    id: 'season',
    lesson: 'season-and-mood',
    says: 'Choose retrieve and pace for temperature and mood.'
  },
  {
    id: 'morning',
    lesson: 'a-morning',
    says: 'Put it together: observe, change one thing, write it down.'
  }
];
