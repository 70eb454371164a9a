/** Said once where snags have a part of their own. */
export const snagCaution =
  'Hung up? Nobody in line with it, face turned away. Never wrap line around a hand.';

/** What can hurt, worst first. Common practice; sources of law differ by place, and come first. */
export const cautions: readonly { name: string; text: string }[] = [
  {
    name: 'Hooks',
    text:
      'Glasses on everyone near a cast. Look behind you; in a boat, agree who casts on which side. ' +
      `A hook near an eye: shield it, don’t pull, get emergency care. ${snagCaution}`
  },
  {
    name: 'Power lines',
    text:
      'Graphite rods conduct. Stay {10 ft|3 m} or more from wires, farther where a rule says so. ' +
      'Look up at ramps too.'
  },
  {
    name: 'Lightning',
    text: 'First thunder: rods down, get to shelter. Wait 30 minutes after the last.'
  },
  {
    name: 'Falling in',
    text:
      'Wear the life jacket: most people who drown from boats wore none. Clip on the kill ' +
      'switch. Somebody on shore knows your plan. No alcohol.'
  },
  {
    name: 'Cold water',
    text:
      'One minute to get your breathing under control. Ten minutes of useful movement. An ' +
      'hour or more until you pass out: stay with the boat.'
  },
  {
    name: 'Lead and law',
    text:
      'Many places restrict small lead: fish something else, and wash your hands. License, ' +
      'seasons, limits. Clean, drain and dry what was in the water.'
  },
  {
    name: 'On the lawn',
    text:
      'No hook on the line. Clear overhead and all around. Strap the phone on so it can’t fly ' +
      'off. In a pool: only if the owner says yes, with the hook cut off.'
  }
];
